using System.Globalization;
using Spoolbook.Papers.KitLists;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Wording;
using Spoolbook.Papers.WrapSummaries;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// What the first sheet answers. Money, film and shots are formulas over the other sheets; what the forecast answers in
/// words is as on the wrap summary.
/// </summary>
static class Answers
{
    const int Third = AnswersSheet.Columns / 3;

    /// <summary>The answers, section by section.</summary>
    public static IReadOnlyList<AnswerSection> Of(LedgerSource source, WorkbookUnits units, WorkbookTerms say)
    {
        var format = say.FormatFor(source.Shoot.Production);
        var producer = ProducerFacts.Of(source.Books, KitFacts.Of(source.Books.Kit, format, source.Waived), format);
        var forecast = ForecastFacts.Of(source.Forecast, format, source.Books.Coverage.Dropped.Select(s => s.Name));
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
            .. producer.Kit.IsEmpty ? (AnswerSection[])[] : [new(say.Word("kit-missing"), [Kit(producer, say)], [])],
        ];
    }

    static IEnumerable<AnswerCard> Money(LedgerSource source, ProducerFacts producer)
    {
        var cost = source.Cost;
        foreach (var ((key, amount), glance) in ProducerFacts.Amounts(source.Books).Zip(producer.Money))
        {
            var formula = FormulaOf(key, cost);
            // Where nothing has a rate, zero would be no answer.
            var value =
                !cost.IsPriced ? glance.Value
                : amount is { } known ? CellValue.Calculated(formula, (double)known)
                : CellValue.CalculatedWords(formula, glance.Value);
            yield return new(glance.What, value, glance.Value, AnswersSheet.Columns / producer.Money.Length)
            {
                NumberFormat = cost.IsPriced ? "0.00" + Quoted(" " + cost.Currency) : null,
            };
        }
    }

    static string FormulaOf(string key, CostBook cost)
    {
        var notSent = NotSent(cost, "SUMIFS(Cost[Amount],", "");
        var priced = NotSent(cost, "COUNTIFS(", ",Cost[Amount],\">=0\"");
        return key switch
        {
            "money-spent" => notSent.Length == 0 ? "CostBought+CostOrdered" : $"CostBought+CostOrdered-({notSent})",
            "money-ordered" => $"IF({priced}=0,\"open\",{notSent})",
            "money-committed" => "CostCommitted",
            "money-to-come" => "IF(OR(LabToCome=\"open\",StockToCome=\"open\"),\"open\",LabToCome+StockToCome)",
            "money-at-the-end" => "CostAtTheEnd",
            _ => throw new ArgumentOutOfRangeException(nameof(key), key, "No formula for this amount."),
        };
    }

    // A term for each consignment that has not gone.
    static string NotSent(CostBook cost, string begin, string end) =>
        string.Join(
            "+",
            from sending in cost.Sendings
            where sending.SentOn is null
            select string.Create(
                CultureInfo.InvariantCulture,
                $"{begin}Cost[Stage],\"{Codes.Of(CostStage.Ordered)}\",Cost[Consignment],{sending.Number}{end})"
            )
        );

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

    static AnswerCard Kit(ProducerFacts producer, WorkbookTerms say)
    {
        var lines = string.Join('\n', producer.Kit);
        return new(say.Word("kit"), lines, lines, AnswersSheet.Columns);
    }

    // A quote within would end it.
    static string Quoted(string words) => words.Length == 0 ? "" : "\"" + words.Replace("\"", "", StringComparison.Ordinal) + "\"";
}
