using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Counters;

static class NoFrames
{
    public static readonly RollCheck Check = new("counter/no-frames", Level.Error, Round.Positions, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) => OfTakes(context, book).Concat(OfRunOffs(context, book));

    // Nothing is lost by it, but somebody copied a line, or another entry is missing.
    static IEnumerable<Finding> OfRunOffs(Context context, RollBook book) =>
        from moment in book.Walk.Moments
        where moment.Entry is RunOff && moment.From == moment.To
        select Check.At(
            book.Roll,
            moment.Entry!.Place,
            Sentence.Of("counter/no-frames.message.run-off", ("at", context.Write(moment.To)))
        ) with
        {
            Level = Level.Warning,
            Others = ContradictionFinder.StoodAt(book, moment.Entry) is { } place
                ? [new Related(place, Sentence.Of("counter/no-frames.other.run-off"))]
                : [],
            Advice = Sentence.Of("counter/no-frames.help.run-off"),
        };

    static IEnumerable<Finding> OfTakes(Context context, RollBook book) =>
        from shot in book.Walk.Takes
        let take = shot.Take
        where shot.Moment.Starts == take.To.Value + shot.Moment.Before.Zero
        select Check.At(
            book.Roll,
            take,
            take.To.Place,
            Sentence.Of("counter/no-frames.message", ("take", take.Slate), ("at", context.Write(shot.Moment.To)))
        ) with
        {
            // Somebody may log a take that never ran. Nobody wants one.
            Level = take.Mark.Value is Mark.Good or Mark.Hold ? Level.Error : Level.Warning,
            Others = (take.From?.Place ?? ContradictionFinder.StoodAt(book, take)) is { } place
                ? [new Related(place, Sentence.Of("counter/no-frames.other.starts"))]
                : [],
            Advice = Sentence.Of("counter/no-frames.help"),
        };
}
