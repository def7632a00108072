using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Lengths;

/// <summary>The readings of one body's footage dial over all the rolls of a production.</summary>
/// <param name="Body">The body, by name; null where no sheet names one.</param>
/// <param name="Rolls">The readings roll by roll, each with film past the gate.</param>
sealed record DialReadings(string? Body, ImmutableArray<(RollBook Roll, ImmutableArray<DialReading> Readings)> Rolls)
{
    // A dial is read in whole feet: nearer the head than this, being a foot off is no drift.
    const int FewestReadings = 3;
    const long NearestFrames = 400;

    /// <summary>The dial readings of every body.</summary>
    public static IEnumerable<DialReadings> Collect(ShootBook book) =>
        from roll in book.Counted
        let drift = Dial.DriftOver(roll.Strip)
        where drift is not null
        from reading in drift.Readings
        group (roll, reading) by reading.Move.Body into ofBody
        select new DialReadings(
            ofBody.Key,
            [.. ofBody.GroupBy(r => r.roll).Select(g => (g.Key, g.Select(r => r.reading).ToImmutableArray()))]
        );

    /// <summary>
    /// The part of the film's length that the dial reads too much (below zero: too little), where it is steady: the
    /// median of the readings, if all are within the tolerance of it. Null where they are not.
    /// </summary>
    public double? EvenDrift(Footage slack)
    {
        var far = Rolls.SelectMany(r => r.Readings).Where(r => r.Strip.Frames >= NearestFrames).ToArray();
        if (far.Length < FewestReadings)
        {
            return null;
        }

        var parts = far.Select(r => (double)r.Off.Frames / r.Strip.Frames).Order().ToArray();
        var middle = parts[parts.Length / 2];
        return Rolls.SelectMany(r => r.Readings).All(r => Math.Abs(r.Off.Frames - (middle * r.Strip.Frames)) <= slack.Frames)
            ? middle
            : null;
    }
}
