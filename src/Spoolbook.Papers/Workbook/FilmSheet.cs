using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// Every stretch of film of the rolls that count, once, for all other sheets to add up. Sums over it compare exactly,
/// because a spreadsheet's SUMIFS reads a scene named <c>7*</c> as a pattern.
/// </summary>
static class FilmSheet
{
    public static readonly string[] YesNo = ["yes", "no"];

    public static TableSheet<(RollBook Roll, Segment Segment)> Of(LedgerSource source, WorkbookUnits units, WorkbookTerms say)
    {
        var lots = source
            .Stock.Loads.Where(l => l.Book is not null)
            .ToLookup(l => l.Book, l => l.Lot.Name.Value, ReferenceEqualityComparer.Instance);
        var shots = source.Books.Coverage.GotOrListed.Select(s => s.Name).ToHashSet(StringComparer.Ordinal);
        bool OfAShot(Segment segment) => segment.Owner is { Take.IsTest: false } owner && shots.Contains(owner.Take.ShotName);
        var production = source.Shoot.Production;
        return new(
            "Film",
            say["about.film"],
            [
                new("Roll", CellFormat.Words, 12, r => r.Roll.Roll.Name.Value),
                new("From", CellFormat.Frames, 9, r => r.Segment.Span.From.Frames) { Allowed = Allowed.From(0) },
                new("To", CellFormat.Frames, 9, r => r.Segment.Span.To.Frames) { Allowed = Allowed.From(0) },
                new("Frames", CellFormat.Frames, 10, r => CellValue.Calculated("[@To]-[@From]", r.Segment.Span.Length.Frames))
                {
                    Summed = true,
                },
                units.OfColumn<(RollBook Roll, Segment Segment)>("Length", 10, "Frames", r => r.Segment.Span.Length),
                new("Account", CellFormat.Words, 9, r => Codes.Of(r.Segment.Account))
                {
                    Allowed = Allowed.Only(Enum.GetValues<Account>().Select(Codes.Of)),
                },
                new("Waste by", CellFormat.Words, 10, r => r.Segment.Cause is { } cause ? Codes.Of(cause) : default(CellValue))
                {
                    Allowed = Allowed.Only(Enum.GetValues<WasteCause>().Select(Codes.Of)),
                },
                new("Day", CellFormat.Date, 12, r => (DateOnly?)r.Segment.Custody.On),
                new("Scene", CellFormat.Words, 9, r => r.Segment.Owner?.Take.Scene.Value),
                new("Shot", CellFormat.Words, 9, r => r.Segment.Owner is { Take.IsTest: false } owner ? owner.Take.ShotName : null),
                new("Of a shot", CellFormat.Words, 9, r =>
                    CellValue.CalculatedWords(
                        "IF(SUMPRODUCT(EXACT(Shots[Shot],[@Shot])*1)>0,IF([@Shot]=\"\",\"no\",\"yes\"),\"no\")",
                        OfAShot(r.Segment) ? "yes" : "no"
                    )
                )
                {
                    Codes = YesNo,
                },
                new("Lot", CellFormat.Words, 14, r => lots[r.Roll].FirstOrDefault()),
                new("Body", CellFormat.Words, 10, r => r.Segment.Custody.Body),
                new("For", CellFormat.Words, 9, r =>
                    production.LotOf(r.Roll.Roll) is { } lot && lots[r.Roll].Any() ? StockSheets.For(lot) : null
                )
                {
                    Allowed = StockSheets.Fors,
                },
                new("Loaded on", CellFormat.Date, 12, r => (DateTime?)r.Roll.Roll.Load.On.Value.Date),
                new("Taken out", CellFormat.Date, 12, r => r.Roll.Roll.Unload?.On.Value.Date),
                new("In camera", CellFormat.Words, 10, r => r.Roll.Roll.Unload is null ? "yes" : "no") { Allowed = Allowed.Only(YesNo) },
            ],
            [.. source.Shoot.Counted.SelectMany(r => r.Strip.Segments.Select(s => (r, s)))]
        );
    }

    /// <summary>The frames of one account, where some columns match this row.</summary>
    public static string Sum(string account, string match) => $"SUMPRODUCT({match}*(Film[Account]=\"{account}\")*Film[Frames])";

    /// <summary>The columns that split up the film of a row: good, hold, no good, waste, and exposed as their sum.</summary>
    /// <param name="match">Selects the row's film, as a product of comparisons over columns of the film.</param>
    public static IEnumerable<Column<TRow>> Accounts<TRow>(
        string match,
        Func<TRow, Tally> tally,
        Func<TRow, MetricTally> metric,
        WorkbookUnits units
    ) => Accounts((_, account) => Sum(Codes.Of(account), match), tally, metric, units);

    /// <summary>The same columns over another sheet.</summary>
    /// <param name="sum">The formula for one account, given the account and the head of its column.</param>
    public static IEnumerable<Column<TRow>> Accounts<TRow>(
        Func<string, Account, string> sum,
        Func<TRow, Tally> tally,
        Func<TRow, MetricTally> metric,
        WorkbookUnits units
    )
    {
        Column<TRow> Of(string head, Account account, Func<Tally, Spoolbook.Film.Footage> length, Func<MetricTally, long> centimetres) =>
            units.Film<TRow>(head, 9, sum(head, account), r => length(tally(r)), r => centimetres(metric(r)));

        yield return Of("Good", Account.Good, t => t.Good, m => m.Good);
        yield return Of("Hold", Account.Hold, t => t.Hold, m => m.Hold);
        yield return Of("No good", Account.NoGood, t => t.NoGood, m => m.NoGood);
        yield return Of("Waste", Account.Waste, t => t.Waste, m => m.Waste);
        var exposed = units.Film<TRow>("Exposed", 9, "[@[Good frames]]+[@[Hold frames]]+[@[No good frames]]+[@[Waste frames]]", r =>
            tally(r).Exposed
        );

        // In metres each account is rounded, and the sum is what they come to as printed.
        yield return units.InMetres
            ? exposed with
            {
                Value = r => CellValue.Calculated("[@Good]+[@Hold]+[@[No good]]+[@Waste]", metric(r).Exposed / 100.0),
            }
            : exposed;
    }

    /// <summary>The figures on how well a row's film was used.</summary>
    public static IEnumerable<Column<TRow>> Use<TRow>(Func<TRow, UseOfFilm> use, WorkbookUnits units)
    {
        yield return new("Screen time", CellFormat.Clock, 8, r =>
            CellValue.Calculated("[@[Good frames]]/ProjectedAt/86400", units.ScreenTime(use(r).Tally.Good))
        )
        {
            Summed = true,
            Bars = true,
        };
        yield return new("Exposed to good", CellFormat.ToOne, 10, r =>
            Ratio("[@[Exposed frames]]", "[@[Good frames]]", use(r).ExposedToGood)
        );
        yield return new("Waste rate", CellFormat.Percent, 8, r => Ratio("[@[Waste frames]]", "[@[Exposed frames]]", use(r).WasteRate));
    }

    /// <summary>A ratio that stays empty where it has no divisor.</summary>
    public static CellValue Ratio(string above, string below, Spoolbook.Film.Ratio? comesTo)
    {
        var formula = $"IF({below}=0,\"\",{above}/{below})";
        return comesTo is { } ratio ? CellValue.Calculated(formula, ratio.ToDouble()) : CellValue.CalculatedWords(formula, "");
    }
}
