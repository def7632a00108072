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
        if (ContradictionFinder.First(book, ContradictionKind.EndsBeforeStart) is not { Entry: Take take } slip)
        {
            yield break;
        }

        var (end, start) = (context.Write(slip.At), context.Write(slip.Limit));
        yield return Check.At(
            book.Roll,
            take,
            slip.Place,
            Sentence.Of("counter/runs-backwards.message", ("take", take.Slate), ("end", end), ("start", start))
        ) with
        {
            Others = (take.From?.Place ?? ContradictionFinder.StoodAt(book, take)) is { } place
                ? [new Related(place, Sentence.Of("counter/runs-backwards.other.the-take-starts-here"))]
                : [],
            Figures =
            [
                new Figure(Sentence.Of("counter/runs-backwards.figure.starts"), start),
                new Figure(Sentence.Of("counter/runs-backwards.figure.ends"), end),
            ],
            Advice = Sentence.Of("counter/runs-backwards.help"),
        };
    }
}
