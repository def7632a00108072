using Spoolbook.Checks.Running;
using Spoolbook.Checks.Stocks;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class FilmWaits
{
    public static readonly RecordCheck Check = new("lab/film-waits", Level.Warning, Look, NeedsAll: true);

    // Once for each day of sending, at the roll that waited longest.
    static IEnumerable<Finding> Look(Context context)
    {
        var today = LastKnown(context);
        return from roll in context.Production.Rolls
               where roll.GoesToLab && roll.Unload is not null && roll.Takes.Any()
               let wait = new Wait(
                   roll,
                   context.WalkOf(roll).Takes.First().Moment.Day,
                   context.Production.SentOn(roll),
                   ColdSince(context, roll)
               )
               {
                   Lab = context.Production.Lab,
               }
               where wait.Days(today) > context.Of(wait.Cold is null ? Tolerances.DaysToLab : Tolerances.DaysToLabCold)
               group wait by wait.Sent?.Value into together
               select Find(context, together.MinBy(w => w.First)!, [.. together], today);
    }

    // Nothing here knows what day it is. The last day of a log or of sending is the latest that it can speak of.
    static DateOnly LastKnown(Context context) =>
        context
            .Production.Rolls.Where(r => !r.IsPractice)
            .Select(r => context.WalkOf(r).EndOfLog.Day)
            .Concat(context.Production.Rolls.Select(context.Production.SentOn).OfType<Located<DateOnly>>().Select(s => s.Value))
            .Append(context.Production.Loan?.BackOn?.Value ?? DateOnly.MinValue)
            .Max();

    static StockEntry? ColdSince(Context context, Roll roll) =>
        StockTouch
            .Of(context.Production, roll)
            .Where(e => e is StockIntoCold or StockOutOfCold && e.On.Value.Day >= DateOnly.FromDateTime(roll.Unload!.On.Value))
            .MinBy(e => e.At) as StockIntoCold;

    static Finding Find(Context context, Wait longest, Wait[] together, DateOnly today)
    {
        var (roll, most) = (longest.Roll, context.Of(longest.Cold is null ? Tolerances.DaysToLab : Tolerances.DaysToLabCold));
        return Check.At(
            roll,
            longest.Sent?.Place ?? roll.Name.Place,
            Sentence.Of(
                longest.Sent is null ? "lab/film-waits.message.waits" : "lab/film-waits.message.waited",
                ("roll", roll.Name.Value),
                ("days", Context.Number(longest.Days(today))),
                ("today", Context.Day(today))
            )
        ) with
        {
            Others =
            [
                new Related(roll.Takes.First().Number.Place, Sentence.Of("lab/film-waits.other.first", ("roll", roll.Name.Value))),
                .. longest.Cold is { } cold ? [new Related(cold.Place, Sentence.Of("lab/film-waits.other.cold"))] : (Related[])[],
            ],
            Figures =
            [
                new(Sentence.Of("lab/film-waits.figure.first"), Context.Day(longest.First)),
                new(
                    Sentence.Of(longest.Cold is null ? "lab/film-waits.figure.warm" : "lab/film-waits.figure.cold"),
                    Sentence.Of("stock/too-warm.value.days", ("days", Context.Number(most)))
                ),
                .. together.Length > 1
                    ? [new(Sentence.Of("lab/film-waits.figure.rolls"), string.Join(", ", together.Select(w => w.Roll.Name.Value)))]
                    : (Figure[])[],
            ],
            Advice = Sentence.Of(
                longest.Sent is not null ? "lab/film-waits.help.waited"
                : longest.Cold is null ? "lab/film-waits.help.warm"
                : "lab/film-waits.help.cold"
            ),
        };
    }

    sealed record Wait(Roll Roll, DateOnly First, Located<DateOnly>? Sent, StockEntry? Cold)
    {
        public Lab? Lab { get; init; }

        // A box before a closed door waits on.
        public int Days(DateOnly today) =>
            (Sent is { } sent ? Lab?.TakenInOn(sent.Value) ?? sent.Value : today).DayNumber - First.DayNumber;
    }
}
