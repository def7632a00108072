using System.Globalization;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Running;

/// <summary>What every check may ask: the production, the tolerances, and how this production writes its figures.</summary>
public sealed record Context(Production Production, Tolerances Tolerances)
{
    /// <summary>Feet and frames, or metres, as the production's papers have them.</summary>
    public string Write(Footage length) => Production.Units == LengthUnit.Metres
        ? (length.Feet(Production.Gauge) * new Ratio(3048, 10_000)).ToText(2) + " m"
        : length.FeetAndFrames(Production.Gauge);

    /// <summary>A count of frames: <c>1 frame</c>, <c>12 frames</c>.</summary>
    public static string Frames(long count) => Count(count, "frame");

    /// <summary>A count of things: <c>1 roll</c>, <c>2 rolls</c>.</summary>
    public static string Count(long count, string thing) => string.Create(CultureInfo.InvariantCulture, $"{count} {thing}{(count == 1 ? "" : "s")}");

    /// <summary>An amount of stops: <c>1 stop</c>, <c>0.5 stops</c>.</summary>
    public static string Stops(double stops) => string.Create(CultureInfo.InvariantCulture, $"{stops:0.##} {(stops == 1 ? "stop" : "stops")}");

    /// <summary>A whole number.</summary>
    public static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>The takes of a roll, each with the body that it was shot with; null where the kit does not have it.</summary>
    public IEnumerable<(Take Take, Body? Body)> TakesWithBodies(Roll roll)
    {
        var body = roll.Body;
        foreach (var entry in roll.Log)
        {
            body = (entry as Reload)?.Body ?? body;
            if (entry is Take take)
            {
                yield return (take, Production.BodyNamed(body?.Value));
            }
        }
    }
}
