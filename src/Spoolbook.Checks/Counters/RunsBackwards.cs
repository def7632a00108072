using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Counters;

static class RunsBackwards
{
    public static readonly RollCheck Check = new("counter/runs-backwards", Level.Error, Round.Positions, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book)
    {
        if (SlipFinder.First(book, SlipKind.EndsBeforeStart) is not { Entry: Take take } slip)
        {
            yield break;
        }

        var (end, start) = (context.Write(slip.At), context.Write(slip.Limit));
        yield return Check.At(book.Roll, take, slip.Place, $"Take {take.Slate} ends at {end}, before its start at {start}") with
        {
            Others = (take.From?.Place ?? SlipFinder.StoodAt(book, take)) is { } place ? [new Related(place, "the take starts here")] : [],
            Figures = [new Figure("starts", start), new Figure("ends", end)],
            Help = "`to:` is where the take ends on the roll, not how long it is: see whether this end or the one before it is wrong. A length is written as `frames:`.",
        };
    }
}
