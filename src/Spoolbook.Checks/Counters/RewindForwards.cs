using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Counters;

static class RewindForwards
{
    public static readonly RollCheck Check = new("counter/rewind-forwards", Level.Error, Round.Positions, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book)
    {
        if (SlipFinder.First(book, SlipKind.WoundForward) is not { Entry: { } entry } slip)
        {
            yield break;
        }

        var (to, stood) = (context.Write(slip.At), context.Write(slip.Limit));
        yield return Check.At(book.Roll, slip.Place, $"The film is wound back to {to}, but it stood at {stood}, before that") with
        {
            Others = SlipFinder.StoodAt(book, entry) is { } place ? [new Related(place, "the film stood here")] : [],
            Figures = [new Figure("film stood at", stood), new Figure("wound back to", to)],
            Help = "`to:` is where the film stands after it was wound back, not how much was wound. If the film was run on, write `- run-off: {to: …, lens: capped}`.",
        };
    }
}
