using System.Globalization;
using System.Text.RegularExpressions;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Counters;

static class TakeSkipped
{
    public static readonly RecordCheck Check = new("counter/take-skipped", Level.Warning, Look, NeedsAll: true);

    static IEnumerable<Finding> Look(Context context)
    {
        var slates = Slates.Of(context.Production).ToArray();
        var told = ToldOtherwise(slates);
        var strangers = Strangers(context, slates);
        return from shot in slates.GroupBy(s => s.Take.ShotName, StringComparer.Ordinal)
               let takes = shot.OrderBy(s => s.Take.Number.Value).ToArray()
               where !told.Contains(shot.Key)
               from pair in takes.Prepend(null).Zip(takes)
               let last = pair.First?.Take.Number.Value ?? 0
               where pair.Second!.Take.Number.Value > last + 1 && !IsExplained(pair.First, pair.Second, last + 1) && !strangers.Contains((pair.Second.Roll, last + 1))
               select Find(pair.First, pair.Second, last + 1);
    }

    // Shots in which a number stands twice or out of order, or a slate is that of another: it leaves a hole.
    static HashSet<string> ToldOtherwise(Slates.Slated[] slates) =>
    [
        .. slates.GroupBy(s => s.Take.Slate, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => g.First().Take.ShotName),
        .. Slates.CountedDown(slates).Select(pair => pair.After.Take.ShotName),
        .. slates.Where(s => s.IsMisfit).SelectMany(s => new[] { s.Take.ShotName, s.Last!.ShotName }),
    ];

    // Slates that are told for themselves, and may be the number that is missed in another shot of their roll.
    static HashSet<(Roll Roll, int Number)> Strangers(Context context, Slates.Slated[] slates)
    {
        var listed = context.Production.Shots.Select(s => s.Name).ToHashSet(StringComparer.Ordinal);
        var repeated = slates.GroupBy(s => s.Take.Slate, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => g.Key).ToHashSet(StringComparer.Ordinal);
        return [.. from s in slates
                   where repeated.Contains(s.Take.Slate) || (listed.Count > 0 && !listed.Contains(s.Take.ShotName))
                   select (s.Roll, s.Take.Number.Value)];
    }

    static Finding Find(Slates.Slated? before, Slates.Slated after, int missing)
    {
        var (take, most) = (after.Take, after.Take.Number.Value - 1);
        var shot = take.ShotName;
        var what = missing == most ? $"Take {shot}/{missing} is" : $"Takes {shot}/{missing} to {shot}/{most} are";
        return Check.At(after.Roll, take, take.Number.Place, $"{what} on no sheet, and take {take.Slate} is") with
        {
            Others = before is null ? [] : [new(before.Take.Number.Place, $"take {before.Take.Slate} is on {before.Roll.Name.Value}")],
            Help = $"If it was shot, write it down: the editor will look for it. If {take.Slate} is a slip of the pen, correct the number. "
                + $"If no film ran on it, say so where it was, `- note: {shot}/{missing} slated, no film run`.",
        };
    }

    // By a remark in its place on the sheet, or by a word on the take before or after it that names its number.
    static bool IsExplained(Slates.Slated? before, Slates.Slated after, int missing) =>
        after.Before.Any(e => e is Remark) || Names(after.Take.Note, missing) || Names(before?.Take.Note, missing);

    static bool Names(Located<string>? note, int number) =>
        note is not null && Regex.IsMatch(note.Value, string.Create(CultureInfo.InvariantCulture, $@"(?<!\d){number}(?!\d)"));
}
