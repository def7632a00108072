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

    public static IEnumerable<SummaryLine> Lines(LedgerSource source, WorkbookUnits units, WorkbookTerms say)
    {
        var forecast = source.Forecast;
        var input = forecast.Input;
        CellValue Length(string formula, Footage film) => CellValue.Calculated(formula, units.Length(film));

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
        yield return new(
            say["line.film-of-shots-got"],
            Length($"SUMPRODUCT({Got}*Shots[Frames])/FramesPerUnit", Sum(input.Finished.Select(s => s.Film))),
            CellFormat.Length,
            say["remark.film-of-shots-got"],
            "FilmOfShotsGot"
        );
        yield return new(say["line.an-average-shot"], Average(input, units), CellFormat.Length, say["remark.average-shot"]);
        yield return new(
            say["line.short-ends-of-no-use"],
            Length($"SUMPRODUCT({Waiting}*(ShortEnds[On hand]<{Usual})*ShortEnds[On hand])/FramesPerUnit", input.TooShort),
            CellFormat.Length,
            say["remark.too-short"],
            "TooShort"
        );
        yield return new(say["line.loss-rate"], Loss(input), CellFormat.Percent, say["remark.loss-rate"], "LossRate");
        yield return new(
            say["line.stock-to-shoot"],
            Length("MAX(0,SUMPRODUCT((Stock[For]=\"shoot\")*Stock[Left to shoot])-TooShort)", input.Stock),
            CellFormat.Length,
            say["remark.stock-to-shoot"],
            "StockToShoot"
        );
        yield return new(
            say["line.a-unit"],
            input.Unit is { } unit ? (CellValue)(double?)units.Length(unit) : "none received",
            CellFormat.Length,
            say["remark.unit"],
            "UnitLength"
        );
        foreach (var line in Needed(forecast, units, say, say.FormatFor(source.Shoot.Production)))
        {
            yield return line;
        }
    }

    static IEnumerable<SummaryLine> Needed(FilmForecast forecast, WorkbookUnits units, WorkbookTerms say, PaperFormat format)
    {
        SummaryLine Wrong(string label, Footage film, string name) =>
            new(label, (CellValue)(double?)units.Length(film), CellFormat.Length, say["remark.wrong-stock"], name);

        if (forecast is { Plain: { } plain, PlainLacking: { } lacks })
        {
            const string average = "FilmOfShotsGot*FramesPerUnit/ShotsGot*ShotsLeft*(1+LossRate)";
            if (forecast.Input.Planned is { } planned)
            {
                yield return new(
                    say["line.planned-at-own-ratio"],
                    (CellValue)(planned / units.FramesPerUnit).ToDouble(),
                    CellFormat.Length,
                    say["remark.planned-at-own-ratio"],
                    "PlannedAtOwnRatio"
                );
            }

            yield return new(
                say["line.needed-at-the-average"],
                CellValue.Calculated(
                    forecast.Input.Planned is null
                        ? $"ROUNDUP(ROUND({average},8),0)/FramesPerUnit"
                        : $"ROUNDUP(ROUND(MAX({average},PlannedAtOwnRatio*FramesPerUnit),8),0)/FramesPerUnit",
                    units.Length(plain)
                ),
                CellFormat.Length,
                say["remark.needed-at-average"],
                "NeededAtAverage"
            );
            var wrong = WrongOf(plain, lacks, forecast);
            if (wrong > Footage.Zero)
            {
                yield return Wrong(say["line.wrong-stock-at-the-average"], wrong, WrongAtAverage);
            }

            yield return new(
                say["line.lacking-at-the-average"],
                CellValue.Calculated("MAX(0,NeededAtAverage-StockToShoot)" + Plus(wrong, WrongAtAverage), units.Length(lacks)),
                CellFormat.Length,
                OrderWords.Units(forecast.PlainOrders ?? [], format)
            );
        }

        foreach (var figure in forecast.Figures)
        {
            var percent = figure.Percent.ToString(CultureInfo.InvariantCulture);
            var (needed, lacking) = ("NeededAt" + percent, "LackingAt" + percent);
            string Say(string key) => say.Fill(key, ("percent", percent));
            yield return new(
                Say("line.needed-at"),
                CellValue.Calculated(ForecastSheet.AtTheEnd("Needed", figure.Percent), units.Length(figure.Needed)),
                CellFormat.Length,
                Say("remark.needed-at"),
                needed
            );
            var wrong = WrongOf(figure.Needed, figure.Lacking, forecast);
            if (wrong > Footage.Zero)
            {
                yield return Wrong(Say("line.wrong-stock-at"), wrong, "WrongStockAt" + percent);
            }

            yield return new(
                Say("line.lacking-at"),
                CellValue.Calculated($"MAX(0,{needed}-StockToShoot)" + Plus(wrong, "WrongStockAt" + percent), units.Length(figure.Lacking)),
                CellFormat.Length,
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

    static CellValue Average(ForecastInput input, WorkbookUnits units)
    {
        const string formula = "IF(ShotsGot=0,\"\",ROUND(FilmOfShotsGot*FramesPerUnit/ShotsGot,0)/FramesPerUnit)";
        return input.Average is { } average ? CellValue.Calculated(formula, units.Length(average)) : CellValue.CalculatedWords(formula, "");
    }

    static CellValue Loss(ForecastInput input) =>
        CellValue.Calculated($"IF({OfShots}=0,0,({Exposed}-{OfShots}+TooShort*FramesPerUnit)/{OfShots})", input.LossRate.ToDouble());

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
