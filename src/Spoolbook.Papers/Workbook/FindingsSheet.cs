using System.Collections.Immutable;
using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Workbook;

/// <summary>The findings, and the waived ones.</summary>
static class FindingsSheet
{
    public static TableSheet<(Finding Finding, string Accepted)> Of(LedgerSource source, WorkbookTerms say)
    {
        ImmutableArray<(Finding, string)> rows =
        [
            .. source.Findings.Select(f => (f, "")),
            .. source.Waived.Select(w => (w.Finding, w.Waiver.Reason?.Value ?? say["without-reason"])),
        ];
        var words = say.FormatFor(source.Books.Production).Sentences;
        return new(
            "Findings",
            say["about.findings"],
            [
                new("Level", CellFormat.Words, 9, f => Codes.Of(f.Finding.Level)) { Codes = [.. Enum.GetValues<Level>().Select(Codes.Of)] },
                new("Check", CellFormat.Words, 24, f => f.Finding.Check),
                new("Roll", CellFormat.Words, 6, f => f.Finding.Roll),
                new("Take", CellFormat.Words, 7, f => f.Finding.Take),
                new("What", CellFormat.LongWords, 46, f => f.Finding.Description.In(words)),
                new("What to do", CellFormat.LongWords, 34, f => f.Finding.Advice.In(words)),
                new("Accepted because", CellFormat.LongWords, 20, f => f.Accepted),
                new("Where", CellFormat.Words, 21, f => f.Finding.Place.ToString()),
            ],
            rows
        );
    }
}
