using System.Globalization;
using Spoolbook.Film;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Forecasts;

namespace Spoolbook.Papers.Workbook;

/// <summary>The film still needed, in lines of the summary: from what the shoot used to what to order.</summary>
static class SummaryForecast
{
    /// <summary>The name of the film at the average that is there and of no use.</summary>
    public const string WrongAtAverage = "WrongStockAtAverage";

    // While every roll is still in a camera, what they lost so far is used instead.
    const string Rolls = "(Film[In camera]=IF(COUNTIF(Film[In camera],\"no\")>0,\"no\",\"yes\"))";
    const string Exposed = "SUMPRODUCT(" + Rolls + "*(Film[Account]<>\"SE\")*Film[Frames])";
    const string OfShots = "SUMPRODUCT(" + Rolls + "*(Film[Of a shot]=\"yes\")*Film[Frames])";
    const string Waiting = "(ShortEnds[For]=\"shoot\")*(ShortEnds[On hand]>0)";
    const string Usual =
        "(IFERROR(INT(("
        + Exposed
        + "-"
        + OfShots
        + ")/MAX(1,IF(COUNT(Rolls[Taken out])>0,COUNT(Rolls[Taken out]),COUNT(Rolls[Loaded "
        + "on])))),0)+IFERROR(INT(AVERAGE(Takes[Frames])),0))";
    const string Got = "(Shots[State]=\"got\")";

    public static IEnumerable<SummaryLine> Lines(LedgerSource source, WorkbookTerms say)
    {
        var forecast = source.Forecast;
        var input = forecast.Input;
        yield return new(
            say["line.shots-got"],
            CellValue.Calculated($"SUMPRODUCT({Got}*1)", input.Finished.Length),
            CellFormat.Count,
            say["remark.shots-got"],
            "ShotsGot"
        );
        yield return new(
            say["line.shots-left"],
            input.ShotsLeft is { } left
                ? CellValue.Calculated("SUMPRODUCT((Shots[Listed]=\"yes\")*(Shots[State]=\"left\"))", left)
                : "no list",
            CellFormat.Count,
            say["remark.shots-left"],
            "ShotsLeft"
        );
        yield return SummaryLine.Length(
            say["line.film-of-shots-got"],
            $"SUMPRODUCT({Got}*Shots[Frames])",
            Sum(input.Finished.Select(s => s.Film)),
            say["remark.film-of-shots-got"],
            "FilmOfShotsGot"
        );
        yield return new(say["line.an-average-shot"], Average(input), CellFormat.Length, say["remark.average-shot"], "AverageShot")
        {
            Film = input.Average,
        };
        yield return SummaryLine.Length(
            say["line.short-ends-of-no-use"],
            $"SUMPRODUCT({Waiting}*(ShortEnds[On hand]<{Usual})*ShortEnds[On hand])",
            input.TooShort,
            say["remark.too-short"],
            "TooShort"
        );
        yield return new(say["line.loss-rate"], Loss(input), CellFormat.Percent, say["remark.loss-rate"], "LossRate");
        yield return SummaryLine.Length(
            say["line.stock-to-shoot"],
            "MAX(0,SUMPRODUCT((Stock[For]=\"shoot\")*Stock[Left to shoot frames])-TooShort)",
            input.Stock,
            say["remark.stock-to-shoot"],
            "StockToShoot"
        );
        yield return input.Unit is { } unit
            ? new(say["line.a-unit"], (long?)unit.Frames, CellFormat.Length, say["remark.unit"], "UnitLength") { Film = unit }
            : new(say["line.a-unit"], "none received", CellFormat.Words, say["remark.unit"], "UnitLength");
        foreach (var line in Needed(forecast, say, say.FormatFor(source.Shoot.Production)))
        {
            yield return line;
        }
    }

    static IEnumerable<SummaryLine> Needed(FilmForecast forecast, WorkbookTerms say, PaperFormat format)
    {
        SummaryLine Wrong(string label, Footage film, string name) =>
            new(label, (long?)film.Frames, CellFormat.Length, say["remark.wrong-stock"], name) { Film = film };

        if (forecast is { Plain: { } plain, PlainLacking: { } lacks })
        {
            const string average = "FilmOfShotsGot/ShotsGot*ShotsLeft*(1+LossRate)";
            if (forecast.Input.Planned is { } planned)
            {
                yield return new(
                    say["line.planned-at-own-ratio"],
                    (CellValue)(Ratio?)planned,
                    CellFormat.Length,
                    say["remark.planned-at-own-ratio"],
                    "PlannedAtOwnRatio"
                )
                {
                    Film = new Footage((long)planned.Round()),
                    Shows = "ROUND(PlannedAtOwnRatio,0)",
                };
            }

            yield return SummaryLine.Length(
                say["line.needed-at-the-average"],
                forecast.Input.Planned is null ? $"ROUNDUP(ROUND({average},8),0)" : $"ROUNDUP(ROUND(MAX({average},PlannedAtOwnRatio),8),0)",
                plain,
                say["remark.needed-at-average"],
                "NeededAtAverage"
            );
            var wrong = WrongOf(plain, lacks, forecast);
            if (wrong > Footage.Zero)
            {
                yield return Wrong(say["line.wrong-stock-at-the-average"], wrong, WrongAtAverage);
            }

            yield return SummaryLine.Length(
                say["line.lacking-at-the-average"],
                "MAX(0,NeededAtAverage-StockToShoot)" + Plus(wrong, WrongAtAverage),
                lacks,
                OrderWords.Units(forecast.PlainOrders ?? [], format),
                "LackingAtAverage"
            );
        }

        foreach (var figure in forecast.Figures)
        {
            var percent = figure.Percent.ToString(CultureInfo.InvariantCulture);
            var (needed, lacking) = ("NeededAt" + percent, "LackingAt" + percent);
            string Say(string key) => say.Fill(key, ("percent", percent));
            yield return SummaryLine.Length(
                Say("line.needed-at"),
                ForecastSheet.AtTheEnd("Simulated", figure.Percent),
                figure.Needed,
                Say("remark.needed-at"),
                needed
            );
            var wrong = WrongOf(figure.Needed, figure.Lacking, forecast);
            if (wrong > Footage.Zero)
            {
                yield return Wrong(Say("line.wrong-stock-at"), wrong, "WrongStockAt" + percent);
            }

            yield return SummaryLine.Length(
                Say("line.lacking-at"),
                $"MAX(0,{needed}-StockToShoot)" + Plus(wrong, "WrongStockAt" + percent),
                figure.Lacking,
                "",
                lacking
            );
            if (figure is { UnitsToOrder: { } order })
            {
                // Units of several stocks or lengths cannot be divided out of one sum.
                var isOne = figure.Orders.Length < 2 && figure.Orders.All(o => o.Order.Unit == forecast.Input.Unit);
                yield return new(
                    Say("line.units-to-order-at"),
                    isOne ? CellValue.Calculated($"ROUNDUP(ROUND({lacking}/UnitLength,8),0)", order) : (CellValue)(long?)order,
                    CellFormat.Count,
                    OrderWords.Units(figure.Orders, format)
                );
            }
        }

        if (forecast.Lasts is { } lasts)
        {
            yield return new(
                say["line.chance-that-the-stock-lasts"],
                CellValue.Calculated("INDEX(Forecast[Lasts],ROWS(Forecast[Lasts]))", lasts.ToDouble()),
                CellFormat.Percent,
                say["remark.chance"]
            );
            yield return RunsOut(forecast, say);
        }
    }

    // Film lacking although there is so much in the store.
    static Footage WrongOf(Footage needed, Footage lacking, FilmForecast forecast) =>
        lacking - Footage.Max(Footage.Zero, needed - forecast.Input.Stock);

    static string Plus(Footage wrong, string name) => wrong > Footage.Zero ? "+" + name : "";

    static CellValue Average(ForecastInput input)
    {
        const string formula = "IF(ShotsGot=0,\"\",ROUND(FilmOfShotsGot/ShotsGot,0))";
        return input.Average is { } average ? CellValue.Calculated(formula, average.Frames) : CellValue.CalculatedWords(formula, "");
    }

    static CellValue Loss(ForecastInput input) =>
        CellValue.Calculated($"IF({OfShots}=0,0,({Exposed}-{OfShots}+TooShort)/{OfShots})", input.LossRate.ToDouble());

    // Counts the evenings on which the film still lasts in more than half of all draws; the next one is it.
    static SummaryLine RunsOut(FilmForecast forecast, WorkbookTerms say)
    {
        var dated = forecast.Days[0].On is not null;
        var formula =
            $"IF(COUNTIF(Forecast[Lasts],\"<=0.5\")=0,\"lasts\",INDEX(Forecast[{(dated ? "Date" : "Day")}],COUNTIF(Forecast[Lasts],\">"
            + $"0.5\")+1))";
        var value = forecast.RunsOut is not { } day
            ? CellValue.CalculatedWords(formula, "lasts")
            : CellValue.Calculated(formula, day.On?.ToDateTime(TimeOnly.MinValue).ToOADate() ?? day.Ahead);
        return new(
            say["line.runs-out"],
            value,
            dated ? CellFormat.Date : CellFormat.Count,
            dated ? say["remark.runs-out-on"] : say["remark.runs-out-after"]
        );
    }

    static Footage Sum(IEnumerable<Footage> lengths) => lengths.Aggregate(Footage.Zero, (sum, l) => sum + l);
}
