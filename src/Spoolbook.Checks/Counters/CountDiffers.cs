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
        select Check.At(book.Roll, entry.Counter!.Place, $"The frame counter read {Context.Number(reading.Read)} here, and by the positions on the sheet it should have read {Context.Number(reading.Expected!.Value)}") with
        {
            Take = (entry as Take)?.Slate,
            Figures =
            [
                new Figure("read", Context.Number(reading.Read)),
                new Figure("by the sheet", Context.Number(reading.Expected!.Value)),
                new Figure("out by", Context.Frames(Math.Abs(reading.Off))),
            ],
            Help = "The counter is right more often than the pen: see whether the position of this entry should be "
                + $"`{context.Write(reading.Move.To - reading.Move.ZeroMoved + new Film.Footage(reading.Off))}`.",
        };
}
