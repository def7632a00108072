using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Counters;

static class OverlapWithoutRewind
{
    public static readonly RollCheck Check = new("counter/overlap-without-rewind", Level.Error, Round.Positions, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book)
    {
        if (SlipFinder.First(book, SlipKind.BehindStand) is not { Entry: { } entry } slip)
        {
            yield break;
        }

        var (at, stood) = (context.Write(slip.At), context.Write(slip.Limit));
        var what = entry is Take take ? $"Take {take.Slate} starts at" : "The film is run on to";
        yield return Check.At(book.Roll, slip.Place, $"{what} {at}, but the film stood at {stood} and nothing says that it was wound back") with
        {
            Take = (entry as Take)?.Slate,
            Others = SlipFinder.StoodAt(book, entry) is { } place ? [new Related(place, "the film stood here")] : [],
            Figures = [new Figure("film stood at", stood), new Figure("written", at), new Figure("overlap", context.Write(slip.Limit - slip.At))],
            Help = $"If it was a second pass, write the rewind before it: `- rewind: {{to: {at}, shutter: closed}}`. If not, correct the position.",
        };
    }
}
