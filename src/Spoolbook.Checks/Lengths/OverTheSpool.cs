using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Lengths;

static class OverTheSpool
{
    public static readonly RollCheck Check = new("length/over-the-spool", Level.Error, Round.Positions, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book)
    {
        if (ContradictionFinder.First(book, ContradictionKind.BeyondEnd) is not { } slip)
        {
            yield break;
        }

        var (roll, loaded) = (book.Roll, context.Write(book.Strip.Loaded));
        yield return Check.At(roll, slip.Place, Describe(context, slip, roll, loaded)) with
        {
            Take = (slip.Entry as Take)?.Slate,
            Others = LengthPlace(context, roll) is { } place
                ? [new Related(place, Sentence.Of("length/over-the-spool.other.what-was-loaded"))]
                : [],
            Figures =
            [
                new Figure(Sentence.Of("length/over-the-spool.figure.loaded"), loaded),
                new Figure(Sentence.Of("length/over-the-spool.figure.written"), context.Write(slip.At)),
                new Figure(Sentence.Of("length/over-the-spool.figure.over-by"), context.Write(slip.At - slip.Limit)),
            ],
            Advice = Sentence.Of("length/over-the-spool.help"),
        };
    }

    static Sentence Describe(Context context, LogContradiction slip, Roll roll, string loaded) =>
        slip.Entry switch
        {
            Take take => Sentence.Of(
                "length/over-the-spool.message.take",
                ("take", take.Slate),
                ("at", context.Write(slip.At)),
                ("loaded", loaded)
            ),
            var entry => Sentence.Of(
                entry switch
                {
                    Rewind => "length/over-the-spool.message.rewind",
                    RunOff => "length/over-the-spool.message.run-off",
                    Reload => "length/over-the-spool.message.reload",
                    _ when slip.Place == roll.Load.Head?.Place => "length/over-the-spool.message.load",
                    _ => "length/over-the-spool.message.unload",
                },
                ("at", context.Write(slip.At)),
                ("loaded", loaded)
            ),
        };

    static Place? LengthPlace(Context context, Roll roll) =>
        roll.Length?.Place ?? roll.ShortEndOf?.Place ?? context.Production.LotOf(roll)?.Length.Place;
}
