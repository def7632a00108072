using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Lengths;

static class HeadNotAllowed
{
    public static readonly RecordCheck Check = new("length/head-not-allowed", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        let first = roll.Takes.FirstOrDefault()
        where first is not null
        select roll.Load.Head is { } head
            ? InsideHead(context, roll, first, head) ?? TooShort(context, roll, first, head)
            : NothingLost(roll, first) into finding
        where finding is not null
        select finding;

    static Finding? InsideHead(Context context, Roll roll, Take first, Located<Footage> head)
    {
        var (start, place) = first.From is { } from ? (from.Value, from.Place) : (first.To.Value, first.To.Place);
        if (start >= head.Value)
        {
            return null;
        }

        return Check.At(
            roll,
            first,
            place,
            Sentence.Of(
                first.From is null ? "length/head-not-allowed.message.ends" : "length/head-not-allowed.message.starts",
                ("first", first.Slate),
                ("start", context.Write(start)),
                ("head", context.Write(head.Value))
            )
        ) with
        {
            Level = Level.Error,
            Others = [new Related(head.Place, Sentence.Of("length/head-not-allowed.other.lost-in-loading"))],
            Figures =
            [
                new Figure(Sentence.Of("length/head-not-allowed.figure.head"), context.Write(head.Value)),
                new Figure(
                    Sentence.Of(
                        first.From is null ? "length/head-not-allowed.figure.take-ends" : "length/head-not-allowed.figure.take-starts"
                    ),
                    context.Write(start)
                ),
            ],
            Advice = Sentence.Of("length/head-not-allowed.help.inside-head"),
        };
    }

    static Finding? TooShort(Context context, Roll roll, Take first, Located<Footage> head) =>
        head.Value == Footage.Zero
        || head.Value >= context.Of(Tolerances.EndsLeast)
        || roll.Load.Light is not { Value: not LoadingLight.Dark } light
            ? null
            : Check.At(
                roll,
                first,
                head.Place,
                Sentence.Of("length/head-not-allowed.message.short", ("head", context.Write(head.Value)))
            ) with
            {
                Others = [new Related(light.Place, Sentence.Of("length/head-not-allowed.other.light"))],
                Advice = Sentence.Of("length/head-not-allowed.help.short"),
            };

    // Loaded in the dark, or with `head: 0+00` written, losing no head is intentional.
    static Finding? NothingLost(Roll roll, Take first)
    {
        return roll.Load.Light?.Value == LoadingLight.Dark
            ? null
            : Check.At(roll, first, roll.Load.Place, Sentence.Of("length/head-not-allowed.message.nothing-lost")) with
            {
                Advice = Sentence.Of("length/head-not-allowed.help.nothing-lost"),
            };
    }
}
