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
        if (SlipFinder.First(book, SlipKind.BeyondEnd) is not { } slip)
        {
            yield break;
        }

        var (roll, loaded) = (book.Roll, context.Write(book.Strip.Loaded));
        yield return Check.At(roll, slip.Place, $"{What(slip, roll)} {context.Write(slip.At)}, and the roll holds {loaded}") with
        {
            Take = (slip.Entry as Take)?.Slate,
            Others = LengthPlace(context, roll) is { } place ? [new Related(place, "what was loaded")] : [],
            Figures =
            [
                new Figure("loaded", loaded),
                new Figure("written", context.Write(slip.At)),
                new Figure("over by", context.Write(slip.At - slip.Limit)),
            ],
            Help = "Look at the position again. If the spool held more than its can says, write what it held: `length: …`.",
        };
    }

    static string What(Slip slip, Roll roll) => slip.Entry switch
    {
        Take take => $"Take {take.Slate} runs to",
        Rewind => "The film is wound to",
        RunOff => "The film is run off to",
        Reload => "The roll is threaded again at",
        _ => slip.Place == roll.Load.Head?.Place ? "Loading took" : "Unloading took",
    };

    static Place? LengthPlace(Context context, Roll roll) => roll.Length?.Place ?? roll.ShortEndOf?.Place ?? context.Production.LotOf(roll)?.Length.Place;
}
