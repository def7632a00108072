using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>A shot on the list: what has to be got.</summary>
/// <param name="Screen">Seconds wanted on the screen.</param>
/// <param name="Light">The light that its takes are shot in, unless one says otherwise.</param>
public sealed record PlannedShot(
    Place Place,
    Located<string> Scene,
    Located<string>? Shot,
    Located<string>? What,
    Located<Ratio>? Screen,
    Located<SubjectLight>? Light
)
{
    /// <summary>Scene and letter together: <c>7B</c>.</summary>
    public string Name => Scene.Value + Shot?.Value;

    /// <summary>
    /// The mains that feed its lamps, in hertz, where discharge lamps on plain ballasts light it, unless a take says otherwise.
    /// </summary>
    public Located<int>? Lamps { get; init; }
}
