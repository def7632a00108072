using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Checks.Lengths;

static class UnaccountedGap
{
    public static readonly RollCheck Check = new("length/unaccounted-gap", Level.Warning, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from at in Enumerable.Range(0, book.Strip.Moves.Length)
        let move = book.Strip.Moves[at]
        let jump = JumpOf(book, move)
        where jump is not null && IsCounted(book, at) && !IsExplained(book.Strip, at)
        let lost = book
            .Strip.SegmentsOver(jump.Value.Span)
            .Where(s => s.Cause == WasteCause.Gap)
            .Sum(s => s.Span.Intersect(jump.Value.Span).Length.Frames)
        where lost > context.Of(Tolerances.GapSlack).Frames
        select Find(context, book, move, jump.Value.Place, new Footage(lost));

    // An entry that starts farther on than the film was.
    static (Span Span, Place Place)? JumpOf(RollBook book, Move move) =>
        move.Entry switch
        {
            Take { From: { } from } => (new Span(move.From, from.Value + move.ZeroMoved), from.Place),
            Reload { To: { } to } reload => (new Span(move.From + (reload.Lost?.Value ?? Footage.Zero), move.To), to.Place),
            _ => null,
        };

    // Before any word on the head, and after a rethreading without a mark, a position proves nothing.
    static bool IsCounted(RollBook book, int at) =>
        (book.Roll.Load.Head is not null || book.Strip.Moves[at].From > Footage.Zero)
        && !book.Strip.Moves.Take(at + 1).Any(m => m.Entry is Reload { ZeroMoved: null });

    // A note on this entry or on the one before it, or a remark between them.
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
        var (gap, stood, starts) = (
            context.Write(lost),
            context.Write(move.From - move.ZeroMoved),
            context.Write(move.From - move.ZeroMoved + lost)
        );
        return Check.At(book.Roll, place, Describe(move.Entry, gap)) with
        {
            Take = (move.Entry as Take)?.Slate,
            Others = ContradictionFinder.StoodAt(book, move.Entry) is { } stand
                ? [new Related(stand, Sentence.Of("length/unaccounted-gap.other.the-film-stood-here"))]
                : [],
            Figures =
            [
                new Figure(Sentence.Of("length/unaccounted-gap.figure.film-stood-at"), stood),
                new Figure(Sentence.Of("length/unaccounted-gap.figure.goes-on-at"), starts),
                new Figure(Sentence.Of("length/unaccounted-gap.figure.gap"), gap),
            ],
            Advice = Sentence.Of("length/unaccounted-gap.help", ("starts", starts)),
        };
    }

    static Sentence Describe(LogEntry entry, string gap) =>
        entry is Take take
            ? Sentence.Of("length/unaccounted-gap.message.take", ("gap", gap), ("take", take.Slate))
            : Sentence.Of("length/unaccounted-gap.message.reload", ("gap", gap));
}
