using System.Collections.Immutable;
using System.Globalization;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Counters;

/// <summary>The takes of a production as slated, with their neighbours on the sheet.</summary>
static class Slates
{
    /// <summary>A take on its roll.</summary>
    /// <param name="Last">The take before it on the roll; null for the first.</param>
    /// <param name="Next">The take after it on the roll; null for the last.</param>
    /// <param name="Before">The entries on the sheet between the take before it and this one.</param>
    public sealed record Slated(Roll Roll, Take Take, Take? Last, Take? Next, ImmutableArray<LogEntry> Before)
    {
        /// <summary>
        /// Whether it is in the middle of another shot's takes and has the number that they miss: 7A/1, 7B/2, 7A/3. The
        /// scene or letter on its slate is wrong, the number right.
        /// </summary>
        public bool IsMisfit { get; init; }

        /// <summary>Whether its slate is on the sheets twice.</summary>
        public bool IsRepeated { get; init; }

        /// <summary>Whether no sheet has the number before its own.</summary>
        public bool IsAfterHole { get; init; }

        /// <summary>Whether its slate may be another take's, so that its shot is uncertain.</summary>
        public bool IsDoubtful => IsMisfit || IsRepeated || IsAfterHole;
    }

    /// <summary>Every take with a slate of its own: no practice roll, no test.</summary>
    public static IEnumerable<Slated> Of(Production production)
    {
        var rolls = production.Rolls.Where(r => !r.IsPractice).ToArray();
        var slates = rolls
            .SelectMany(r => r.Takes)
            .GroupBy(t => t.Slate, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal);
        return from slated in rolls.SelectMany(Of)
               where slated.Take.Mark.Value != Mark.Test
               let isRepeated = slates[slated.Take.Slate] > 1
               select slated with
               {
                   IsRepeated = isRepeated,
                   IsMisfit =
                       !isRepeated
                       && StandsAmongOthers(slated)
                       && !slates.ContainsKey(SlateOf(slated.Last!.ShotName, slated.Take.Number.Value)),
                   IsAfterHole =
                       slated.Take.Number.Value > 1 && !slates.ContainsKey(SlateOf(slated.Take.ShotName, slated.Take.Number.Value - 1)),
               };
    }

    /// <summary>
    /// Slates with a finding of their own, by roll and number: one that is there twice, or a wanted take of a shot that
    /// is not on the shot list. It may be the very number that another shot of the roll misses.
    /// </summary>
    public static HashSet<(string Roll, int Number)> Strangers(Production production, IEnumerable<Slated> slates) =>
        [
            .. from s in slates
            where s.IsRepeated || (s.Take.Mark.Value is Mark.Good or Mark.Hold && !IsListed(production, s.Take))
            select (s.Roll.Name.Value, s.Take.Number.Value),
        ];

    /// <summary>Whether a take's shot is on the shot list, or there is no list.</summary>
    public static bool IsListed(Production production, Take take) =>
        production.Shots.IsEmpty || production.ShotNamed(take.ShotName) is not null;

    static string SlateOf(string shot, int number) => string.Create(CultureInfo.InvariantCulture, $"{shot}/{number}");

    // 7A/1, 7B/2, 7A/3.
    static bool StandsAmongOthers(Slated slated) =>
        slated is { Take: { } take, Last: { } last, Next: { } next }
        && last.ShotName == next.ShotName
        && last.ShotName != take.ShotName
        && take.Number.Value == last.Number.Value + 1
        && next.Number.Value == take.Number.Value + 1;

    /// <summary>
    /// Successive takes of one shot on a roll whose numbers go down. A roll's log is in the order of shooting. A
    /// repeated number is another mistake.
    /// </summary>
    public static IEnumerable<(Slated Before, Slated After)> CountedDown(IReadOnlyCollection<Slated> slates) =>
        from shot in slates.GroupBy(s => (s.Roll.Name.Value, s.Take.ShotName))
        from pair in shot.Zip(shot.Skip(1))
        where pair.Second.Take.Number.Value < pair.First.Take.Number.Value && !pair.First.IsRepeated && !pair.Second.IsRepeated
        select (pair.First, pair.Second);

    static IEnumerable<Slated> Of(Roll roll)
    {
        var takes = roll.Takes.ToArray();
        var between = new List<LogEntry>();
        var i = 0;
        foreach (var entry in roll.Log)
        {
            if (entry is not Take take)
            {
                between.Add(entry);
                continue;
            }

            // The nearest entry first.
            between.Reverse();
            yield return new Slated(roll, take, i > 0 ? takes[i - 1] : null, i + 1 < takes.Length ? takes[i + 1] : null, [.. between]);
            between.Clear();
            i++;
        }
    }
}
