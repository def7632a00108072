using System.Collections.Immutable;

namespace Spoolbook.Shoot.Strips;

/// <summary>Checks the footage dial: coarse, read in feet, and drifting.</summary>
public static class Dial
{
    /// <summary>The dial's readings and its drift; null where it was not read with film past the gate.</summary>
    public static CounterDrift? DriftOver(Strip strip)
    {
        ImmutableArray<DialReading> readings =
        [
            .. strip
                .Moves.Where(m => m.Entry.Dial is not null && m.To > m.ZeroMoved)
                .Select(m => new DialReading(m, m.To - m.ZeroMoved, m.Entry.Dial!.Value)),
        ];
        if (readings.IsEmpty)
        {
            return null;
        }

        var slope = readings.Sum(r => (double)r.Off.Frames * r.Strip.Frames) / readings.Sum(r => (double)r.Strip.Frames * r.Strip.Frames);
        var residual = readings.Select(r => r.Off.Frames - (slope * r.Strip.Frames)).MaxBy(Math.Abs);
        return new CounterDrift(readings, slope * 100, residual);
    }
}
