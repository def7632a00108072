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
        var flagged = FlaggedElsewhere(context, slates);
        var strangers = Slates.Strangers(context.Production, slates);
        return from shot in slates.GroupBy(s => s.Take.ShotName, StringComparer.Ordinal)
               let takes = shot.OrderBy(s => s.Take.Number.Value).ToArray()
               where !flagged.Contains(shot.Key)
               from pair in takes.Prepend(null).Zip(takes)
               let missing = (pair.First?.Take.Number.Value ?? 0) + 1
               where pair.Second!.Take.Number.Value > missing && !IsExplained(pair.First, pair.Second, missing)
               where
                   !strangers.Contains((pair.Second.Roll.Name.Value, missing))
                   && !(pair.First is { } before && strangers.Contains((before.Roll.Name.Value, missing)))
               select Find(pair.First, pair.Second, missing);
    }

    // A shot with a repeated, misplaced or mistaken slate has gaps because of that, and already has a finding.
    static HashSet<string> FlaggedElsewhere(Context context, Slates.Slated[] slates) =>
        [
            .. slates
                .Where(s => s.IsRepeated || (s.Take.Mark.Value is Mark.Good or Mark.Hold && !Slates.IsListed(context.Production, s.Take)))
                .Select(s => s.Take.ShotName),
            .. Slates.CountedDown(slates).Select(pair => pair.After.Take.ShotName),
            .. slates.Where(s => s.IsMisfit).SelectMany(s => new[] { s.Take.ShotName, s.Last!.ShotName }),
        ];

    static Finding Find(Slates.Slated? before, Slates.Slated after, int missing)
    {
        var (take, most) = (after.Take, after.Take.Number.Value - 1);
        var shot = take.ShotName;
        return Check.At(
            after.Roll,
            take,
            take.Number.Place,
            Sentence.Of(
                missing == most ? "counter/take-skipped.message.one" : "counter/take-skipped.message.many",
                ("shot", shot),
                ("missing", missing),
                ("last", most),
                ("take", take.Slate)
            )
        ) with
        {
            Others = before is null
                ? []
                :
                [
                    new(
                        before.Take.Number.Place,
                        Sentence.Of("counter/take-skipped.other.take-is-on", ("take", before.Take.Slate), ("roll", before.Roll.Name.Value))
                    ),
                ],
            Advice = Sentence.Of("counter/take-skipped.help", ("take", take.Slate), ("shot", shot), ("missing", missing)),
        };
    }

    // A remark in the gap, or a note on the take before or after that names the number.
    static bool IsExplained(Slates.Slated? before, Slates.Slated after, int missing) =>
        after.Before.Any(e => e is Remark) || Names(after.Take.Note, missing) || Names(before?.Take.Note, missing);

    static bool Names(Located<string>? note, int number) =>
        note is not null && Regex.IsMatch(note.Value, string.Create(CultureInfo.InvariantCulture, $@"(?<!\d){number}(?!\d)"));
}
