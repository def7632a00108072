using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Counters;

static class CountDiffers
{
    public static readonly RollCheck Check = new("counter/count-differs", Level.Warning, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from reading in FrameCounter.Readings(context.Production, book.Strip)
        where Math.Abs(reading.Off) > context.Of(Tolerances.CounterSlack)
        let entry = reading.Move.Entry
        select Check.At(
            book.Roll,
            entry.Counter!.Place,
            Sentence.Of(
                "counter/count-differs.message",
                ("read", Context.Number(reading.Read)),
                ("expected", Context.Number(reading.Expected!.Value))
            )
        ) with
        {
            Take = (entry as Take)?.Slate,
            Figures =
            [
                new Figure(Sentence.Of("counter/count-differs.figure.read"), Context.Number(reading.Read)),
                new Figure(Sentence.Of("counter/count-differs.figure.by-the-sheet"), Context.Number(reading.Expected!.Value)),
                new Figure(Sentence.Of("counter/count-differs.figure.out-by"), Context.Frames(Math.Abs(reading.Off))),
            ],
            Advice = Sentence.Of(
                "counter/count-differs.help",
                ("value", context.Write(reading.Move.To - reading.Move.ZeroMoved + new Film.Footage(reading.Off)))
            ),
        };
}
