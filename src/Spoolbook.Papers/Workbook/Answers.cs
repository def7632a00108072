using System.Globalization;
using Spoolbook.Papers.KitLists;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Wording;
using Spoolbook.Papers.WrapSummaries;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// What the first sheet answers. Money, film and shots are formulas over the other sheets; what the forecast answers in
/// words is as on the wrap summary.
/// </summary>
static class Answers
{
    const int Third = AnswersSheet.Columns / 3;
    const int Quarter = AnswersSheet.Columns / 4;

    /// <summary>The answers, section by section.</summary>
    public static IReadOnlyList<AnswerSection> Of(LedgerSource source, WorkbookUnits units, WorkbookTerms say)
    {
        var format = say.FormatFor(source.Shoot.Production);
        var producer = ProducerFacts.Of(source.Books, KitFacts.Of(source.Books.Kit, format), format);
        var forecast = ForecastFacts.Of(source.Forecast, format, source.Books.Coverage.Dropped);
        return
        [
            new(
                say.Word("money"),
                [.. Money(source, producer)],
                [
                    .. producer.NotPriced.Length == 0 ? (string[])[] : [say.Word("cost-open") + " " + producer.NotPriced],
                    .. producer.ToComeOf.Length == 0 ? (string[])[] : [producer.ToComeOf],
                ]
            ),
            new(
                say.Word("film"),
                [.. forecast.Answers.Select(a => new AnswerCard(a.What, a.Value, a.Value, Third)), .. Left(source, units, producer)],
                forecast.Notes
            ),
            new(say.Word("shots"), [.. Shots(source, producer, say, format)], []),
        ];
    }

    static IEnumerable<AnswerCard> Money(LedgerSource source, ProducerFacts producer)
    {
        var (cost, end) = (source.Cost, source.Books.ToEnd);
        (string Formula, decimal? Amount)[] figures =
        [
            ("CostBought+CostOrdered", cost.ToDate),
            ("CostCommitted", cost.TotalAt(Shoot.Accounts.CostStage.Committed)),
            ("IF(OR(LabToCome=\"open\",StockToCome=\"open\"),\"open\",LabToCome+StockToCome)", end.ToCome),
            ("CostAtTheEnd", end.Total),
        ];
        foreach (var ((formula, amount), glance) in figures.Zip(producer.Money))
        {
            // Where nothing has a rate, zero would be no answer.
            var value =
                !cost.IsPriced ? glance.Value
                : amount is { } known ? CellValue.Calculated(formula, (double)known)
                : CellValue.CalculatedWords(formula, glance.Value);
            yield return new(glance.What, value, glance.Value, Quarter)
            {
                NumberFormat = cost.IsPriced ? "0.00" + Quoted(" " + cost.Currency) : null,
            };
        }
    }

    static IEnumerable<AnswerCard> Left(LedgerSource source, WorkbookUnits units, ProducerFacts producer)
    {
        foreach (var (i, (kind, glance)) in source.Stock.Kinds.Zip(producer.Left).Index())
        {
            var left = units.Shown(StockSheets.LeftName(i), kind.Left, source.Books.Metric.Of(kind.Lots).Left, dash: false);
            yield return units.InMetres
                ? new(glance.What, left, glance.Value, Third) { NumberFormat = "0.00" + Quoted(" m") }
                : new(
                    glance.What,
                    CellValue.CalculatedWords(left.Formula + "&\" \"&FilmUnit", left.Text + " " + units.UnitName),
                    glance.Value,
                    Third
                );
        }
    }

    static IEnumerable<AnswerCard> Shots(LedgerSource source, ProducerFacts producer, WorkbookTerms say, PaperFormat format)
    {
        var coverage = source.Books.Coverage;
        var got = coverage.Counted.Count(s => s.IsGot);
        var formula = coverage.Listed.IsEmpty ? "ShotsGot" : "SUMPRODUCT((Shots[Listed]=\"yes\")*(Shots[State]=\"got\"))";
        var around = format
            .Words.Fill("shots-got", ("got", "\u0001"), ("all", coverage.Counted.Count().ToString(CultureInfo.InvariantCulture)))
            .Split('\u0001');
        yield return new(producer.Got.What, CellValue.Calculated(formula, got), producer.Got.Value, Third)
        {
            NumberFormat = Quoted(around[0]) + "0" + Quoted(around[^1]),
        };
        if (!producer.ToGet.IsEmpty)
        {
            var missing = string.Join('\n', producer.ToGet);
            yield return new(say.Word("shots-to-get"), missing, missing, AnswersSheet.Columns - Third);
        }
    }

    // A quote within would end it.
    static string Quoted(string words) => words.Length == 0 ? "" : "\"" + words.Replace("\"", "", StringComparison.Ordinal) + "\"";
}
