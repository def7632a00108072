using System.Collections.Immutable;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.KitLists;

/// <summary>The kit, out and back, for every paper with it.</summary>
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

    /// <summary>The pieces that are missing or not counted back with the others, or of which there is something to say.</summary>
    public required ImmutableArray<KitLine> Noted { get; init; }

    /// <summary>How many others there are, which the kit list has; empty where there are none.</summary>
    public required string Rest { get; init; }

    /// <summary>What did not come back, a sentence each.</summary>
    public required ImmutableArray<string> Missing { get; init; }

    /// <summary>Whether any of it is missing that the production did not accept.</summary>
    public required bool IsMissing { get; init; }

    /// <summary>What to do before it goes back in the case.</summary>
    public required ImmutableArray<CareStep> Care { get; init; }

    /// <summary>What else the owner wants done.</summary>
    public required ImmutableArray<string> OwnersCare { get; init; }

    /// <param name="waived">What the production accepted; whoever lent the kit is not asked.</param>
    internal static KitFacts Of(KitBook kit, PaperFormat format, IReadOnlyCollection<Waived>? waived = null)
    {
        var loan = kit.Loan;
        string? OwnerOf(KitPiece piece) => (piece.Returned.Owner ?? loan?.Owner)?.Value;
        var byOwner = kit.Pieces.Select(OwnerOf).Distinct().Count() > 1;
        var lines = kit
            .Pieces.Select(p =>
                (
                    p.Kind,
                    Owner: byOwner ? OwnerOf(p) : null,
                    Line: KitLine.Of(p, kit, !byOwner, format),
                    p.Returned.Out,
                    Accepted: waived?.FirstOrDefault(w => w.Finding.Check == "kit/not-returned" && w.Finding.Piece == p.Name.Value)
                )
            )
            .OrderBy(l => l.Owner != loan?.Owner?.Value)
            .ToList();

        // Once some of it is counted back, whoever reads on looks for what is not.
        var isCounting = lines.Exists(l => l.Line.IsBack || l.Line.Missing);
        bool IsNoted(KitLine line) => line.Missing || line.Remarks.Length > 0 || (isCounting && !line.IsBack);
        return new KitFacts
        {
            Owner = loan?.Owner?.Value ?? "",
            BorrowedBy = loan?.BorrowedBy is { } by ? format.Person(by.Value) : "",
            WentOut = format.DateOrBlank(loan?.On),
            Due = format.DateOrBlank(loan?.Due),
            CameBack = format.DateOrBlank(loan?.BackOn),
            Pieces = format.Count(kit.Out, "piece"),
            Value = kit.Value is { } value
                ? format.Worth(value)
                    + (
                        kit.WithoutValue == 0
                            ? ""
                            : " " + format.Words.Fill("kit-without-value", ("pieces", format.Count(kit.WithoutValue, "piece")))
                    )
                : "",
            Groups =
            [
                .. lines
                    .GroupBy(l => l.Owner)
                    .SelectMany(owner =>
                        owner.GroupBy(l => l.Kind).Select(g => new KitGroup(Heading(owner.Key, g.Key, format), [.. g.Select(l => l.Line)]))
                    ),
            ],
            Noted = [.. lines.Where(l => IsNoted(l.Line)).Select(l => l.Line)],
            Rest = RestOf(lines.Where(l => !IsNoted(l.Line)).Sum(l => l.Out), kit, format),
            Missing =
            [
                .. lines.Where(l => l.Line.Missing).Select(l => Missed(l.Line, l.Accepted, format)),
                .. kit
                    .Pieces.Where(p => p.SchoolLoan is { Missing.IsEmpty: false })
                    .Select(p =>
                        format.Words.Fill(
                            "kit-missing-with",
                            ("piece", p.Name.Value),
                            ("what", string.Join(", ", p.SchoolLoan!.Missing.Select(m => m.Value)))
                        )
                    ),
            ],
            IsMissing =
                lines.Exists(l => l.Line.Missing && l.Accepted is null) || kit.Pieces.Any(p => p.SchoolLoan is { Missing.IsEmpty: false }),
            Care = CareStep.Of(kit, format),
            OwnersCare = [.. (loan?.Care ?? []).Select(c => c.Value)],
        };
    }

    static string RestOf(long pieces, KitBook kit, PaperFormat format) =>
        pieces == 0
            ? ""
            : format.Words.Fill("kit-nothing-to-note", ("pieces", format.Count(pieces, pieces == kit.Out ? "piece" : "other-piece")));

    static string Missed(KitLine line, Waived? accepted, PaperFormat format)
    {
        var said = format.Words.Fill("kit-missing-line", ("what", line.What), ("out", line.Out), ("back", line.Back));
        return accepted is null
            ? said
            : format.Words.Fill(
                "kit-missing-accepted",
                ("line", said),
                ("reason", accepted.Waiver.Reason?.Value ?? format.Words["not-stated"])
            );
    }

    // Where things of several owners are in the case, each owner's are together: they go back to different people.
    static string Heading(string? owner, KitKind kind, PaperFormat format) =>
        format.Words["kit-" + kind.ToString().ToLowerInvariant()] is var what && owner is { Length: > 0 } ? owner + ": " + what : what;
}
