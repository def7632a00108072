using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Counters;

/// <summary>The takes of a production as they were slated, with their neighbours on the sheet.</summary>
static class Slates
{
    /// <summary>A take on its roll.</summary>
    /// <param name="Last">The take before it on the roll; null for the first.</param>
    /// <param name="Next">The take after it on the roll; null for the last.</param>
    /// <param name="Before">What stands on the sheet between the take before it and this one.</param>
    public sealed record Slated(Roll Roll, Take Take, Take? Last, Take? Next, ImmutableArray<LogEntry> Before)
    {
        /// <summary>
        /// Whether it stands in the middle of another shot's takes and goes on with their numbers, of which the one
        /// that it has is missing: 7A/1, 7B/2, 7A/3. Its scene or its letter is wrong, and its number is not.
        /// </summary>
        public bool IsMisfit { get; init; }
    }

    /// <summary>Every take that has a slate of its own: on no practice roll, and no test.</summary>
    public static IEnumerable<Slated> Of(Production production)
    {
        var rolls = production.Rolls.Where(r => !r.IsPractice).ToArray();
        var slates = rolls.SelectMany(r => r.Takes).Select(t => t.Slate).ToHashSet(StringComparer.Ordinal);
        return rolls.SelectMany(Of).Where(s => s.Take.Mark.Value != Mark.Test).Select(s => s with { IsMisfit = StandsAmongOthers(s) && !slates.Contains($"{s.Last!.ShotName}/{s.Take.Number.Value}") });
    }

    // 7A/1, 7B/2, 7A/3.
    static bool StandsAmongOthers(Slated slated) =>
        slated is { Take: { } take, Last: { } last, Next: { } next }
        && last.ShotName == next.ShotName
        && last.ShotName != take.ShotName
        && take.Number.Value == last.Number.Value + 1
        && next.Number.Value == take.Number.Value + 1;

    /// <summary>
    /// Takes of one shot that follow one another on a roll and whose numbers go down. A roll's log is in the
    /// order of shooting. A number that stands twice is another mistake.
    /// </summary>
    public static IEnumerable<(Slated Before, Slated After)> CountedDown(IReadOnlyCollection<Slated> slates) =>
        from shot in slates.GroupBy(s => (s.Roll.Name.Value, s.Take.ShotName))
        from pair in shot.Zip(shot.Skip(1))
        where pair.Second.Take.Number.Value < pair.First.Take.Number.Value && slates.Count(s => s.Take.Slate == pair.Second.Take.Slate) == 1
        select (pair.First, pair.Second);

    static IEnumerable<Slated> Of(Roll roll)
    {
        var takes = roll.Takes.ToArray();
        for (var i = 0; i < takes.Length; i++)
        {
            var between = roll.Log.TakeWhile(e => !ReferenceEquals(e, takes[i])).Reverse().TakeWhile(e => e is not Take);
            yield return new Slated(roll, takes[i], i > 0 ? takes[i - 1] : null, i + 1 < takes.Length ? takes[i + 1] : null, [.. between]);
        }
    }
}
