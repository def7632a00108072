using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.KitLists;

/// <summary>A piece of the kit.</summary>
/// <param name="Details">
/// Its number, what is screwed into it, place and value, and who has it, where the loan does not say so for the whole kit.
/// </param>
/// <param name="Remarks">Its condition, and what happened to it.</param>
/// <param name="WentOut">Whether it is known to have gone out.</param>
/// <param name="IsBack">Whether all of it is known to have come back.</param>
/// <param name="Missing">Whether fewer came back than went out.</param>
public sealed record KitLine(string What, string Details, string Out, string Back, string Remarks, bool WentOut, bool IsBack, bool Missing)
{
    /// <param name="withOwner">Whether to say whose it is, where no heading does.</param>
    internal static KitLine Of(KitPiece piece, KitBook kit, bool withOwner, PaperFormat format)
    {
        var returned = piece.Returned;
        return new KitLine(
            piece.Name.Value + (piece.What is { } what ? ", " + what.Value : ""),
            string.Join(" · ", DetailsOf(piece, withOwner, format)),
            PaperFormat.Number(returned.Out),
            returned.Back is { } back ? PaperFormat.Number(back.Value) : format.Words["kit-still-out"],
            string.Join("; ", RemarksOf(piece, format)),
            kit.Loan?.On is not null || returned.Back is not null,
            returned.Back is not null && returned.Missing <= 0,
            returned.Missing > 0
        );
    }

    static IEnumerable<string> DetailsOf(KitPiece piece, bool withOwner, PaperFormat format)
    {
        var returned = piece.Returned;
        if (piece.Serial is { } serial)
        {
            yield return serial.Value;
        }

        if (piece.MadeFor is { } made)
        {
            yield return format.Words[made == LensMadeFor.Prism ? "kit-made-for-prism" : "kit-made-for-air"];
        }

        if (!piece.Turret.IsEmpty)
        {
            yield return format.Words.Fill("kit-turret", ("lenses", string.Join(", ", piece.Turret)));
        }

        if (piece.Sprockets is { } rows)
        {
            yield return format.Words[rows == 1 ? "kit-sprockets-one-side" : "kit-sprockets-both-sides"];
        }

        if (returned.Kept is { } kept)
        {
            yield return kept.Value;
        }

        if (returned.Value is { } value)
        {
            yield return format.Words.Fill(returned.Out > 1 ? "kit-value-each" : "kit-value-of", ("value", format.Worth(value.Value)));
        }

        if (withOwner && returned.Owner is { } owner)
        {
            yield return format.Words.Fill("kit-owner", ("owner", owner.Value));
        }

        if (returned.BorrowedBy is { } by)
        {
            yield return format.Words.Fill("kit-borrower", ("name", format.Person(by.Value)));
        }

        if (returned.Due is { } due)
        {
            yield return format.Words.Fill("kit-due", ("day", format.Date(due.Value)));
        }
    }

    static IEnumerable<string> RemarksOf(KitPiece piece, PaperFormat format)
    {
        var returned = piece.Returned;
        if (piece.FilmIn is { } film)
        {
            yield return format.Words.Fill("kit-film-in", ("roll", film.Name.Value));
        }

        if (returned.ConditionOut is { } before)
        {
            yield return format.Words.Fill("kit-condition-out", ("state", before.Value));
        }

        if (returned.ConditionBack is { } after)
        {
            yield return format.Words.Fill("kit-condition-back", ("state", after.Value));
        }

        if (piece.SchoolLoan?.Condition is { } condition)
        {
            yield return format.Words["kit-came-back-" + condition.Value.ToString().ToLowerInvariant()];
        }

        if (piece.SchoolLoan is { Missing.IsEmpty: false } loan)
        {
            yield return format.Words.Fill("kit-came-back-without", ("what", string.Join(", ", loan.Missing.Select(m => m.Value))));
        }

        if (piece.SpringLeft is { } spring)
        {
            yield return format.Words[spring == SpringLeft.RunDown ? "kit-spring-run-down" : "kit-spring-wound"];
        }

        if (returned.Note is { } note)
        {
            yield return note.Value;
        }
    }
}
