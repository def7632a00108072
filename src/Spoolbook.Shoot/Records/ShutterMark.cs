using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>A mark of a variable shutter.</summary>
/// <param name="Open">The part of the full opening that is left: 1 is open, 0 closed.</param>
/// <param name="Stops">The stops that the trade counts for it; null where its opening says them.</param>
public sealed record ShutterMark(Place Place, Located<string> Name, Located<Ratio> Open, Located<double>? Stops)
{
    /// <summary>Its opening, with the stops that are written, else those of the opening itself.</summary>
    public ShutterOpening Opening =>
        Stops is { } stops && Open.Value.Sign > 0
            ? new ShutterOpening(Name.Value, Open.Value, -stops.Value)
            : ShutterOpening.ByOpening(Name.Value, Open.Value);
}
