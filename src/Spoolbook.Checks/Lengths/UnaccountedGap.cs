using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Lengths;

static class UnaccountedGap
{
    public static readonly RollCheck Check = new("length/unaccounted-gap", Level.Warning, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from at in Enumerable.Range(0, book.Strip.Moves.Length)
        let move = book.Strip.Moves[at]
        let jump = JumpOf(book, move)
        where jump is not null && IsCounted(book, at) && !IsExplained(book.Strip, at)
        let lost = book.Strip.SegmentsOver(jump.Value.Span).Where(s => s.Cause == WasteCause.Gap).Sum(s => s.Span.Intersect(jump.Value.Span).Length.Frames)
        where lost > context.Of(Tolerances.GapSlack).Frames
        select Find(context, book, move, jump.Value.Place, new Footage(lost));

    // Where an entry starts farther on than the film stood.
    static (Span Span, Place Place)? JumpOf(RollBook book, Move move) => move.Entry switch
    {
        Take { From: { } from } => (new Span(move.From, from.Value + move.ZeroMoved), from.Place),
        Reload { To: { } to } reload => (new Span(move.From + (reload.Lost?.Value ?? Footage.Zero), move.To), to.Place),
        _ => null,
    };

    // Before anything was said of the head, and after a threading that nobody marked, a position tells nothing.
    static bool IsCounted(RollBook book, int at) =>
        (book.Roll.Load.Head is not null || book.Strip.Moves[at].From > Footage.Zero)
        && !book.Strip.Moves.Take(at + 1).Any(m => m.Entry is Reload { ZeroMoved: null });

    // By a word on the entries on both sides, or on anything that was written between them.
    static bool IsExplained(Strip strip, int at)
    {
        for (var i = at; i >= 0; i--)
        {
            if (strip.Moves[i].Entry is { Note: not null } or Remark)
            {
                return true;
            }

            if (i < at && strip.Moves[i].From != strip.Moves[i].To)
            {
                return false;
            }
        }

        return false;
    }

    static Finding Find(Context context, RollBook book, Move move, Place place, Footage lost)
    {
        var (gap, stood, starts) = (context.Write(lost), context.Write(move.From - move.ZeroMoved), context.Write(move.From - move.ZeroMoved + lost));
        var before = move.Entry is Take take ? $"take {take.Slate}" : "the roll was threaded again";
        return Check.At(book.Roll, place, $"{gap} of film ran through before {before}, and nothing on the sheet says why") with
        {
            Take = (move.Entry as Take)?.Slate,
            Others = SlipFinder.StoodAt(book, move.Entry) is { } stand ? [new Related(stand, "the film stood here")] : [],
            Figures = [new Figure("film stood at", stood), new Figure("goes on at", starts), new Figure("gap", gap)],
            Help = "See whether a take was left off the sheet: the slates tell. "
                + $"If film was only run on, write `- run-off: {{to: {starts}, lens: capped}}`; if it was something else, say it in a `note:`; if a position is wrong, correct it.",
        };
    }
}
