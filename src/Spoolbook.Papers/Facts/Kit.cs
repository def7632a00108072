using System.Collections.Immutable;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Facts;

/// <summary>The facts of the kit list.</summary>
public sealed record KitListFacts(PaperHead Head, KitFacts Kit) : PaperFacts(Head);

/// <summary>The kit, out and back, wherever it stands.</summary>
public sealed record KitFacts
{
    public required string Owner { get; init; }
    public required string BorrowedBy { get; init; }
    public required string WentOut { get; init; }
    public required string Due { get; init; }
    public required string CameBack { get; init; }
    public required string Pieces { get; init; }
    public required string Value { get; init; }
    public required ImmutableArray<KitGroup> Groups { get; init; }

    /// <summary>What did not come back, a sentence each.</summary>
    public required ImmutableArray<string> Missing { get; init; }

    /// <summary>What to do before it goes in the box.</summary>
    public required ImmutableArray<CareStep> Care { get; init; }

    /// <summary>What the owner wants done beyond that.</summary>
    public required ImmutableArray<string> OwnersCare { get; init; }

    internal static KitFacts Of(KitBook kit, Wording say)
    {
        var loan = kit.Loan;
        var lines = kit.Pieces.Select(p => (p.Kind, Line: KitLine.Of(p, kit, say))).ToList();
        return new KitFacts
        {
            Owner = loan?.Owner?.Value ?? "",
            BorrowedBy = loan?.BorrowedBy is { } by ? say.Person(by.Value) : "",
            WentOut = say.DateOrBlank(loan?.On),
            Due = say.DateOrBlank(loan?.Due),
            CameBack = say.DateOrBlank(loan?.BackOn),
            Pieces = say.Count(kit.Out, "piece"),
            Value = kit.Value is { } value ? say.Worth(value) + (kit.WithoutValue == 0 ? "" : " " + say.Words.Fill("kit-without-value", ("pieces", say.Count(kit.WithoutValue, "piece")))) : "",
            Groups = [.. lines.GroupBy(l => l.Kind).Select(g => new KitGroup(say.Words["kit-" + g.Key.ToString().ToLowerInvariant()], [.. g.Select(l => l.Line)]))],
            Missing = [.. lines.Where(l => l.Line.Missing).Select(l => say.Words.Fill("kit-missing-line", ("what", l.Line.What), ("out", l.Line.Out), ("back", l.Line.Back)))],
            Care = CareStep.Of(kit, say),
            OwnersCare = [.. (loan?.Care ?? []).Select(c => c.Value)],
        };
    }
}

/// <summary>Things of one kind.</summary>
public sealed record KitGroup(string Kind, ImmutableArray<KitLine> Lines);

/// <summary>Something lent with the kit.</summary>
/// <param name="Details">Its number, its place, its value, and who has it: what the loan does not say of all.</param>
/// <param name="Remarks">What state it was in, and what happened to it.</param>
/// <param name="WentOut">Whether it is known to have gone out.</param>
/// <param name="IsBack">Whether all of it is known to have come back.</param>
/// <param name="Missing">Whether fewer came back than went out.</param>
public sealed record KitLine(string What, string Details, string Out, string Back, string Remarks, bool WentOut, bool IsBack, bool Missing)
{
    internal static KitLine Of(KitPiece piece, KitBook kit, Wording say)
    {
        var returned = piece.Returned;
        return new KitLine(
            piece.Name.Value + (piece.What is { } what ? ", " + what.Value : ""),
            string.Join(" · ", DetailsOf(piece, say)),
            Wording.Number(returned.Out),
            returned.Back is { } back ? Wording.Number(back.Value) : say.Words["kit-still-out"],
            string.Join("; ", RemarksOf(piece, say)),
            kit.Loan?.On is not null || returned.Back is not null,
            returned.Back is not null && returned.Missing <= 0,
            returned.Missing > 0);
    }

    static IEnumerable<string> DetailsOf(KitPiece piece, Wording say)
    {
        var returned = piece.Returned;
        if (piece.Serial is { } serial)
        {
            yield return serial.Value;
        }

        if (returned.Kept is { } kept)
        {
            yield return kept.Value;
        }

        if (returned.Value is { } value)
        {
            yield return say.Words.Fill(returned.Out > 1 ? "kit-value-each" : "kit-value-of", ("value", say.Worth(value.Value)));
        }

        if (returned.Owner is { } owner)
        {
            yield return say.Words.Fill("kit-owner", ("owner", owner.Value));
        }

        if (returned.BorrowedBy is { } by)
        {
            yield return say.Words.Fill("kit-borrower", ("name", say.Person(by.Value)));
        }

        if (returned.Due is { } due)
        {
            yield return say.Words.Fill("kit-due", ("day", say.Date(due.Value)));
        }
    }

    static IEnumerable<string> RemarksOf(KitPiece piece, Wording say)
    {
        var returned = piece.Returned;
        if (piece.FilmIn is { } film)
        {
            yield return say.Words.Fill("kit-film-in", ("roll", film.Name.Value));
        }

        if (returned.ConditionOut is { } before)
        {
            yield return say.Words.Fill("kit-condition-out", ("state", before.Value));
        }

        if (returned.ConditionBack is { } after)
        {
            yield return say.Words.Fill("kit-condition-back", ("state", after.Value));
        }

        if (piece.SpringLeft is { } spring)
        {
            yield return say.Words[spring == SpringLeft.RunDown ? "kit-spring-run-down" : "kit-spring-wound"];
        }

        if (returned.Note is { } note)
        {
            yield return note.Value;
        }
    }
}

/// <summary>Something to do before the kit goes in its box.</summary>
/// <param name="Done">Whether it was written down as done.</param>
public sealed record CareStep(string What, bool Done)
{
    // Common practice, in the order in which it is done: film, spring, gate, filters, caps, then the count.
    internal static ImmutableArray<CareStep> Of(KitBook kit, Wording say)
    {
        var words = say.Words;
        var springs = kit.Pieces.Where(p => p.HasSpring).ToList();
        var films = kit.Pieces.Select(p => p.FilmIn).OfType<Roll>().ToList();
        bool Has(KitKind kind) => kit.Pieces.Any(p => p.Kind == kind);
        var steps = new List<CareStep>();
        void Add(bool needed, string key, bool done = false)
        {
            if (needed)
            {
                steps.Add(new CareStep(words[key], done));
            }
        }

        steps.AddRange(films.Select(f => new CareStep(words.Fill("care-film-in", ("roll", f.Name.Value)), false)));
        Add(Has(KitKind.Body) && films.Count == 0, "care-no-film");
        Add(springs.Count > 0, "care-spring", springs.All(p => p.SpringLeft == SpringLeft.RunDown));
        Add(Has(KitKind.Body), "care-gate");
        Add(Has(KitKind.Filter), "care-filters");
        Add(Has(KitKind.Body), "care-slot");
        Add(Has(KitKind.Lens), "care-lenses");
        Add(Has(KitKind.Body), "care-mount");
        Add(Has(KitKind.Meter), "care-meter");
        Add(Has(KitKind.Motor), "care-motor");
        Add(kit.Pieces.Any(p => p.TakeUp), "care-spools");
        Add(true, "care-told");
        Add(true, "care-count");
        return [.. steps];
    }
}
