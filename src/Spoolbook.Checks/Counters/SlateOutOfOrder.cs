using System.Collections.Immutable;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Counters;

static class SlateOutOfOrder
{
    public static readonly RecordCheck Check = new("counter/slate-out-of-order", Level.Warning, Look, NeedsAll: true);

    static IEnumerable<Finding> Look(Context context)
    {
        var slates = Slates.Of(context.Production).ToImmutableArray();
        return [.. slates.Where(s => s.IsMisfit).Select(Misfit), .. Backwards(slates), .. Letters(context, slates)];
    }

    static Finding Misfit(Slates.Slated slated)
    {
        var (take, around) = (slated.Take, slated.Last!);
        return Check.At(
            slated.Roll,
            take,
            (take.Shot ?? take.Scene).Place,
            Sentence.Of("counter/slate-out-of-order.message.among-others", ("take", take.Slate), ("shot", around.ShotName))
        ) with
        {
            Others =
            [
                new(around.Number.Place, Sentence.Of("counter/slate-out-of-order.other.take.before", ("around", around.Slate))),
                new(slated.Next!.Number.Place, Sentence.Of("counter/slate-out-of-order.other.take.next", ("next", slated.Next.Slate))),
            ],
            Advice = Sentence.Of("counter/slate-out-of-order.help.among-others", ("number", take.Number.Value), ("shot", around.ShotName)),
        };
    }

    static IEnumerable<Finding> Backwards(ImmutableArray<Slates.Slated> slates) =>
        from pair in Slates.CountedDown(slates)
        let last = pair.Before.Take
        let take = pair.After.Take
        select Check.At(
            pair.After.Roll,
            take,
            take.Number.Place,
            Sentence.Of("counter/slate-out-of-order.message.backwards", ("take", take.Slate), ("last", last.Slate))
        ) with
        {
            Others = [new(last.Number.Place, Sentence.Of("counter/slate-out-of-order.other.take.last", ("last", last.Slate)))],
            Advice = Sentence.Of("counter/slate-out-of-order.help.backwards"),
        };

    // Where there is a shot list, a shot that is not on it is not missing.
    static IEnumerable<Finding> Letters(Context context, ImmutableArray<Slates.Slated> slates) =>
        from scenes in new[] { context.Production.Shots.Select(s => s.Scene.Value).ToHashSet(StringComparer.Ordinal) }
        from scene in slates.GroupBy(s => s.Take.Scene.Value, StringComparer.Ordinal)
        let letters = scene.Select(s => s.Take.Shot?.Value).Distinct().ToArray()
        let listed = scenes.Contains(scene.Key)
        from first in scene.Where(s => s.Take.Shot is not null).DistinctBy(s => s.Take.Shot!.Value)
        let letter = first.Take.Shot!
        let missing = listed ? [] : ShotLetters.MissingBefore(letter.Value, letters)
        where ShotLetters.ReadsAsFigure(letter.Value) || missing.Length > 0
        select Check.At(
            first.Roll,
            first.Take,
            letter.Place,
            missing.Length == 0
                ? Sentence.Of(
                    "counter/slate-out-of-order.message.read-as-figure",
                    ("shot", first.Take.ShotName),
                    ("figure", letter.Value is "I" or "i" ? 1 : 0)
                )
                : Sentence.Of(
                    "counter/slate-out-of-order.message.missing",
                    ("shot", first.Take.ShotName),
                    ("missing", Missing(scene.Key, missing))
                )
        ) with
        {
            Level = Level.Note,
            Advice =
                missing.Length == 0
                    ? Sentence.Of("counter/slate-out-of-order.help.read-as-figure")
                    : Sentence.Of("counter/slate-out-of-order.help.missing"),
        };

    static Sentence Missing(string scene, IEnumerable<string> letters) =>
        letters
            .Select(letter => Sentence.Plain(scene + letter))
            .Aggregate((before, last) => Sentence.Of("counter/slate-out-of-order.value.and-no", ("before", before), ("last", last)));
}
