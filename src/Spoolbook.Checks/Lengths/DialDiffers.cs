using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Lengths;

static class DialDiffers
{
    public static readonly BookCheck Check = new("length/dial-differs", Level.Warning, Look);

    // Where the frame counter contradicts the sheet too, its finding gives the difference. One is enough.
    static IEnumerable<Finding> Look(Context context, Books books) =>
        from dial in DialReadings.Collect(books.Shoot)
        let drift = dial.EvenDrift(context.Of(Tolerances.DialSlack))
        where drift is null
        from roll in dial.Rolls
        where !FrameCounter.Readings(context.Production, roll.Roll.Strip).Any(r => Math.Abs(r.Off) > context.Of(Tolerances.CounterSlack))
        from reading in Off(context, roll.Readings)
        select Find(context, roll.Roll, reading);

    // After one wrong reading the next are compared with it, so that one slip is one finding.
    static IEnumerable<DialReading> Off(Context context, IEnumerable<DialReading> readings)
    {
        var known = Footage.Zero;
        foreach (var reading in readings)
        {
            var most = context.Of(Tolerances.DialSlack).Frames + (context.Of(Tolerances.DialDrift).ToDouble() * reading.Strip.Frames);
            if (Math.Abs(reading.Off.Frames) <= most)
            {
                known = Footage.Zero;
            }
            else if (Math.Abs((reading.Off - known).Frames) > most)
            {
                known = reading.Off;
                yield return reading;
            }
        }
    }

    static Finding Find(Context context, RollBook book, DialReading reading)
    {
        var (entry, off) = (reading.Move.Entry, context.Write(new Footage(Math.Abs(reading.Off.Frames))));
        return Check.At(
            book.Roll,
            entry.Dial!.Place,
            Sentence.Of("length/dial-differs.message", ("read", context.Write(reading.Read)), ("strip", context.Write(reading.Strip)))
        ) with
        {
            Take = (entry as Shoot.Records.Take)?.Slate,
            Figures =
            [
                new(Sentence.Of("length/dial-differs.figure.dial"), context.Write(reading.Read)),
                new(Sentence.Of("length/dial-differs.figure.by-the-sheet"), context.Write(reading.Strip)),
                new(Sentence.Of("length/dial-differs.figure.apart-by"), off),
            ],
            Advice = Sentence.Of("length/dial-differs.help"),
        };
    }
}
