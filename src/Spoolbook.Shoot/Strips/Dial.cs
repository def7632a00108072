using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Shoot.Strips;

/// <summary>One reading of the footage dial against the strip.</summary>
/// <param name="Move">The entry at whose end it was read.</param>
/// <param name="Strip">What the dial would tell if it were exact: where the film stood, in the sheet's counting.</param>
/// <param name="Read">What it told.</param>
public sealed record DialReading(Move Move, Footage Strip, Footage Read)
{
    /// <summary>Film that the dial told too much; below zero if too little.</summary>
    public Footage Off => Read - Strip;
}

/// <summary>How a footage dial ran away from the film over a roll.</summary>
/// <param name="Readings">Its readings, in the order of the log.</param>
/// <param name="Drift">
/// Feet that it told too much for each 100 ft of film (below zero: too little). Since a dial and a strip both
/// start at zero, the straight line through zero with the least squares of the errors.
/// </param>
/// <param name="Residual">The farthest that a reading lies from that line, in frames; below zero if below it. A dial read in whole feet is good to about half a foot.</param>
public sealed record DialDrift(ImmutableArray<DialReading> Readings, double Drift, double Residual);

/// <summary>Checks the footage dial: coarse, read in feet, and drifting.</summary>
public static class Dial
{
    /// <summary>The dial's readings and its drift; null where it was not read with film past the gate.</summary>
    public static DialDrift? DriftOver(Strip strip)
    {
        ImmutableArray<DialReading> readings = [.. strip.Moves
            .Where(m => m.Entry.Dial is not null && m.To > m.ZeroMoved)
            .Select(m => new DialReading(m, m.To - m.ZeroMoved, m.Entry.Dial!.Value))];
        if (readings.IsEmpty)
        {
            return null;
        }

        var slope = readings.Sum(r => (double)r.Off.Frames * r.Strip.Frames) / readings.Sum(r => (double)r.Strip.Frames * r.Strip.Frames);
        var residual = readings.Select(r => r.Off.Frames - (slope * r.Strip.Frames)).MaxBy(Math.Abs);
        return new DialDrift(readings, slope * 100, residual);
    }
}
