using System.Collections.Immutable;
using System.Globalization;
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

        /// <summary>Whether its slate stands on the sheets twice.</summary>
        public bool IsRepeated { get; init; }

        /// <summary>Whether the number before its own is on no sheet.</summary>
        public bool IsAfterHole { get; init; }

        /// <summary>Whether its slate may be that of another take: what its shot is, is not sure.</summary>
        public bool IsDoubtful => IsMisfit || IsRepeated || IsAfterHole;
    }

    /// <summary>Every take that has a slate of its own: on no practice roll, and no test.</summary>
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
    /// Slates that are told for themselves, by roll and number: one that stands twice, or a wanted take of a shot that
    /// the list does not have. Another shot of the roll may miss that very number.
    /// </summary>
    public static HashSet<(string Roll, int Number)> Strangers(Production production, IEnumerable<Slated> slates) =>
        [
            .. from s in slates
            where s.IsRepeated || (s.Take.Mark.Value is Mark.Good or Mark.Hold && !IsListed(production, s.Take))
            select (s.Roll.Name.Value, s.Take.Number.Value),
        ];

    /// <summary>Whether a take's shot is on the shot list, or there is none.</summary>
    public static bool IsListed(Production production, Take take) =>
        production.Shots.IsEmpty || production.Shots.Any(s => s.Name == take.ShotName);

    static string SlateOf(string shot, int number) => string.Create(CultureInfo.InvariantCulture, $"{shot}/{number}");

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
        where pair.Second.Take.Number.Value < pair.First.Take.Number.Value && !pair.First.IsRepeated && !pair.Second.IsRepeated
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
