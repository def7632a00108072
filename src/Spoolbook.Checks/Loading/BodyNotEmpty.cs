using System.Globalization;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Checks.Loading;

static class BodyNotEmpty
{
    public static readonly RecordCheck Check = new("load/body-not-empty", Level.Warning, Look);

    // A practice spool goes in and out all day, and its sheet has few hours.
    static IEnumerable<Finding> Look(Context context) =>
        from stays in from roll in context.Production.Rolls
                      where !roll.IsPractice
                      from stay in context.WalkOf(roll).Stays
                      group stay by stay.Body
        where context.Production.BodyNamed(stays.Key) is { } body && context.Production.TakesRollsItself(body)
        from pair in Together([.. stays.OrderBy(s => s.From)], TimeSpan.FromSeconds(context.Of(Tolerances.ClockSlack).ToDouble()))
        select Find(pair.First, pair.Next);

    // Once for each roll that stayed in too long, at the first that met it.
    static IEnumerable<(BodyStay First, BodyStay Next)> Together(BodyStay[] stays, TimeSpan slack)
    {
        var isFlagged = false;
        for (var (at, first) = (1, 0); at < stays.Length; at++)
        {
            var (before, next) = (stays[first], stays[at]);
            var meets = before.To is null || next.From < before.To - slack || next.From == before.From;
            if (meets && !isFlagged && !ReferenceEquals(before.Roll, next.Roll))
            {
                isFlagged = true;
                yield return (before, next);
            }

            if (before.To is { } out_ && !(next.To < out_))
            {
                (first, isFlagged) = (at, false);
            }
        }
    }

    static Finding Find(BodyStay first, BodyStay next)
    {
        var sameDay = first.To?.Date == next.From.Date;
        return Check.At(
            next.Roll,
            next.In,
            first.To is { } out_
                ? Sentence.Of(
                    "load/body-not-empty.message.together",
                    ("roll", next.Roll.Name.Value),
                    ("body", next.Body),
                    ("at", Written(next.From, sameDay)),
                    ("first", first.Roll.Name.Value),
                    ("out", Written(out_, sameDay))
                )
                : Sentence.Of(
                    "load/body-not-empty.message.never-out",
                    ("roll", next.Roll.Name.Value),
                    ("body", next.Body),
                    ("first", first.Roll.Name.Value)
                )
        ) with
        {
            Level = first.To is null ? Level.Error : Level.Warning,
            Others =
            [
                new Related(first.In, Sentence.Of("load/body-not-empty.other.in", ("roll", first.Roll.Name.Value))),
                .. first.Out is { } place
                    ? [new Related(place, Sentence.Of("load/body-not-empty.other.out", ("roll", first.Roll.Name.Value)))]
                    : (Related[])[],
            ],
            Advice = first.To is null
                ? Sentence.Of("load/body-not-empty.help.never-out", ("first", first.Roll.Name.Value))
                : Sentence.Of("load/body-not-empty.help.together", ("first", first.Roll.Name.Value)),
        };
    }

    static string Written(DateTime when, bool hourIsEnough) =>
        when.ToString(hourIsEnough ? "HH:mm" : "yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
