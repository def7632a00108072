using Spoolbook.Film;
using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Forecasts;

namespace Spoolbook.Papers.Workbook;

/// <summary>A line of the summary: its label, its figure, and a remark.</summary>
/// <param name="Name">The defined name of its cell; null for none.</param>
sealed record SummaryLine(string Label, CellValue Value, CellFormat Format, string Remark, string? Name = null);

/// <summary>The film still needed, in lines of the summary: from what the shoot spent to what there is to order.</summary>
static class SummaryForecast
{
    // While every roll is still in a camera, what they lost so far stands in.
    const string Rolls = "(Film[In camera]=IF(COUNTIF(Film[In camera],\"no\")>0,\"no\",\"yes\"))";
    const string Exposed = "SUMPRODUCT(" + Rolls + "*(Film[Account]<>\"SE\")*Film[Frames])";
    const string OfShots = "SUMPRODUCT(" + Rolls + "*(Film[Of a shot]=\"yes\")*Film[Frames])";
    const string Waiting = "(ShortEnds[For]=\"shoot\")*(ShortEnds[On hand]>0)";
    const string Usual = "(IFERROR(INT((" + Exposed + "-" + OfShots + ")/MAX(1,IF(COUNT(Rolls[Taken out])>0,COUNT(Rolls[Taken out]),COUNT(Rolls[Loaded on])))),0)+IFERROR(INT(AVERAGE(Takes[Frames])),0))";
    const string Got = "(Shots[State]=\"got\")";

    public static IEnumerable<SummaryLine> Of(LedgerSource source, WorkbookUnits units)
    {
        var forecast = source.Forecast;
        var ground = forecast.Ground;
        CellValue Length(string formula, Footage film) => CellValue.Calculated(formula, units.Length(film));

        yield return new("Shots got", CellValue.Calculated($"SUMPRODUCT({Got}*1)", ground.Finished.Length), CellFormat.Count, "shots with a good take", "ShotsGot");
        yield return new(
            "Shots left",
            ground.ShotsLeft is { } left ? CellValue.Calculated("SUMPRODUCT((Shots[Listed]=\"yes\")*(Shots[State]=\"left\"))", left) : "no list",
            CellFormat.Count,
            "listed shots without one",
            "ShotsLeft");
        yield return new("Film of shots got", Length($"SUMPRODUCT({Got}*Shots[Frames])/FramesPerUnit", Sum(ground.Finished.Select(s => s.Film))), CellFormat.Length, "all their takes", "FilmOfShotsGot");
        yield return new("An average shot", Average(ground, units), CellFormat.Length, "to the nearest frame");
        yield return new("Short ends of no use", Length($"SUMPRODUCT({Waiting}*(ShortEnds[On hand]<{Usual})*ShortEnds[On hand])/FramesPerUnit", ground.TooShort), CellFormat.Length, "too short for a usual loading's loss and a usual take", "TooShort");
        yield return new("Loss rate", Loss(ground), CellFormat.Percent, "film lost beside the takes to film of shots, on rolls taken out", "LossRate");
        yield return new("Stock to shoot", Length("MAX(0,SUMPRODUCT((Stock[For]=\"shoot\")*Stock[Left to shoot])-TooShort)", ground.Stock), CellFormat.Length, "left to shoot, short ends of no use apart", "StockToShoot");
        yield return new("A unit", ground.Unit is { } unit ? (CellValue)(double?)units.Length(unit) : "none received", CellFormat.Length, "the commonest length received", "UnitLength");
        foreach (var line in Needed(forecast, units))
        {
            yield return line;
        }
    }

    static IEnumerable<SummaryLine> Needed(FilmForecast forecast, WorkbookUnits units)
    {
        if (forecast is { Plain: { } plain, PlainLacking: { } lacks })
        {
            yield return new(
                "Needed at the average",
                CellValue.Calculated("ROUNDUP(ROUND(FilmOfShotsGot*FramesPerUnit/ShotsGot*ShotsLeft*(1+LossRate),8),0)/FramesPerUnit", units.Length(plain)),
                CellFormat.Length,
                "for the shots left, with the losses",
                "NeededAtAverage");
            yield return new("Lacking at the average", CellValue.Calculated("MAX(0,NeededAtAverage-StockToShoot)", units.Length(lacks)), CellFormat.Length, "");
        }

        foreach (var figure in forecast.Figures)
        {
            var (needed, percent) = (ForecastSheet.AtTheEnd("Needed", figure.Percent), figure.Percent);
            yield return new($"Needed at {percent} %", CellValue.Calculated(needed, units.Length(figure.Needed)), CellFormat.Length, $"enough in {percent} of 100 cases");
            yield return new($"Lacking at {percent} %", CellValue.Calculated($"MAX(0,{needed}-StockToShoot)", units.Length(figure.Lacking)), CellFormat.Length, "");
            if (figure is { UnitsToOrder: { } order })
            {
                yield return new($"Units to order at {percent} %", CellValue.Calculated($"ROUNDUP(ROUND(MAX(0,{needed}-StockToShoot)/UnitLength,8),0)", order), CellFormat.Count, "");
            }
        }

        if (forecast.Lasts is { } lasts)
        {
            yield return new("Chance that the stock lasts", CellValue.Calculated("INDEX(Forecast[Lasts],ROWS(Forecast[Lasts]))", lasts.ToDouble()), CellFormat.Percent, "the part of all cases drawn");
            yield return RunsOut(forecast);
        }
    }

    static CellValue Average(ForecastGround ground, WorkbookUnits units)
    {
        const string formula = "IF(ShotsGot=0,\"\",ROUND(FilmOfShotsGot*FramesPerUnit/ShotsGot,0)/FramesPerUnit)";
        return ground.Average is { } average ? CellValue.Calculated(formula, units.Length(average)) : CellValue.CalculatedWords(formula, "");
    }

    static CellValue Loss(ForecastGround ground) =>
        CellValue.Calculated($"IF({OfShots}=0,0,({Exposed}-{OfShots}+TooShort*FramesPerUnit)/{OfShots})", ground.LossRate.ToDouble());

    // The evenings before it are those on which the film still lasts in more than half of all cases.
    static SummaryLine RunsOut(FilmForecast forecast)
    {
        var dated = forecast.Days[0].On is not null;
        var formula = $"IF(COUNTIF(Forecast[Lasts],\"<=0.5\")=0,\"lasts\",INDEX(Forecast[{(dated ? "Date" : "Day")}],COUNTIF(Forecast[Lasts],\">0.5\")+1))";
        var value = forecast.RunsOut is not { } day ? CellValue.CalculatedWords(formula, "lasts")
            : CellValue.Calculated(formula, day.On?.ToDateTime(TimeOnly.MinValue).ToOADate() ?? day.Ahead);
        return new("Runs out", value, dated ? CellFormat.Date : CellFormat.Count, dated ? "by that evening, more likely than not" : "shooting days from now, more likely than not");
    }

    static Footage Sum(IEnumerable<Footage> lengths) => lengths.Aggregate(Footage.Zero, (sum, l) => sum + l);
}
