using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>A shot on the list.</summary>
/// <param name="Screen">Screen time wanted, in seconds.</param>
/// <param name="Light">The light of its takes, unless a take has its own.</param>
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

    /// <summary>The mains of its lamps, in hertz, where discharge lamps on plain ballasts light it; a take may have its own.</summary>
    public Located<int>? Lamps { get; init; }
}
