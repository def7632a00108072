using System.Globalization;
using ClosedXML.Excel;
using Spoolbook.Film;
using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Workbook;

/// <summary>The first sheet: the figures that a producer opens the workbook for, and how to read the rest.</summary>
sealed class SummarySheet(LedgerSource source, WorkbookUnits units, SheetWriter writer, XLWorkbook book)
{
    readonly IXLWorksheet _sheet = writer.Add("Summary");
    readonly Dictionary<int, string> _labels = [];
    int _row = 4;
    string? _name;

    public void Write()
    {
        var production = source.Shoot.Production;
        writer.Title(_sheet, production.Title.Value, $"{production.Code.Value} · footage workbook · made {source.Made.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}");
        (_sheet.Column(1).Width, _sheet.Column(2).Width, _sheet.Column(3).Width) = (30, 18, 62);
        Notices();
        Film();
        Use();
        Stock();
        Forecast();
        Money();
        Settings();
        HowToRead();
        _sheet.SheetView.FreezeRows(3);
        _sheet.PageSetup.PageOrientation = XLPageOrientation.Portrait;
        _sheet.PageSetup.FitToPages(1, 1);
    }

    void Notices()
    {
        if (source.IsDraft)
        {
            Notice("DRAFT: errors stand in the sheets; see Findings. The figures may be wrong.");
        }

        if (source.Shoot.Production.Invented is { } invented)
        {
            Notice(invented.Value);
        }
    }

    void Notice(string words)
    {
        writer.Put(_sheet.Cell(_row, 1), words, CellFormat.Words);
        _sheet.Range(_row, 1, _row, 3).Style.Fill.SetBackgroundColor(SheetWriter.Alarm);
        _sheet.Cell(_row, 1).Style.Font.SetBold();
        _row += 2;
    }

    void Film()
    {
        var total = source.Shoot.Total;
        Heading("Film");
        Length("Loaded", "SUM(Rolls[Loaded])", total.Loaded, "practice rolls are in no account");
        Length("Good", "SUM(Rolls[Good])", total.Good, "");
        Length("Hold", "SUM(Rolls[Hold])", total.Hold, "");
        Length("No good", "SUM(Rolls[No good])", total.NoGood, "");
        Length("Waste", "SUM(Rolls[Waste])", total.Waste, "");
        foreach (var cause in Enum.GetValues<WasteCause>().Where(c => total.WastedBy(c) > Footage.Zero))
        {
            Length($"   of it {Codes.Of(cause)}", $"SUMPRODUCT((Film[Waste by]=\"{Codes.Of(cause)}\")*Film[Frames])/FramesPerUnit", total.WastedBy(cause), "");
        }

        Length("Left over", "SUM(Rolls[Left over])", total.ShortEnd, "short ends, used again or not, and film still in a camera");
        Length("Exposed", "SUM(Rolls[Exposed])", total.Exposed, "good, hold, no good and waste: what the lab processes");
        Line(
            "Frames unaccounted for",
            CellValue.Calculated("ROUND((SUM(Rolls[Loaded])-SUM(Rolls[Exposed])-SUM(Rolls[Left over]))*FramesPerUnit,0)", 0),
            CellFormat.Count,
            "0, or something is wrong with this workbook");
    }

    void Use()
    {
        var use = source.Stock.Use;
        Heading("How it was used");
        Line("Takes", CellValue.Calculated("SUM(Rolls[Takes])", use.Takes), CellFormat.Count, "");
        Line("Shots", CellValue.Calculated("SUM(Takes[New shot])", use.Shots), CellFormat.Count, "scene and letter together");
        Line("Takes a shot", FilmSheet.Ratio("SUM(Rolls[Takes])", CellAbove(1), use.TakesAShot), CellFormat.Seconds, "");
        Line("Good screen time", CellValue.Calculated("SUM(Rolls[Screen time])", units.ScreenTime(use.Tally.Good)), CellFormat.Clock, "minutes and seconds at the projection speed");
        Line("Exposed to good", FilmSheet.Ratio("SUM(Rolls[Exposed])", "SUM(Rolls[Good])", use.ExposedToGood), CellFormat.ToOne, "film exposed, waste and all, to good film");
        Line("Exposed to planned", Planned(use), CellFormat.ToOne, "film exposed, waste and all, to the planned running time");
        Line("Waste rate", FilmSheet.Ratio("SUM(Rolls[Waste])", "SUM(Rolls[Exposed])", use.WasteRate), CellFormat.Percent, "waste to film exposed");
    }

    static CellValue Planned(UseOfFilm use) => use.ExposedToPlanned is { } ratio
        ? CellValue.Calculated("SUM(Rolls[Exposed])*FramesPerUnit/(PlannedSeconds*ProjectedAt)", ratio.ToDouble())
        : "no plan";

    void Stock()
    {
        var stock = source.Stock;
        Heading("Stock");
        Length("Received", "SUMPRODUCT((Stock[For]=\"shoot\")*Stock[Received])", new(stock.Counted.Sum(l => l.Received.Frames)), "practice lots apart");
        Length("On hand", "SUMPRODUCT((Stock[For]=\"shoot\")*Stock[On hand])", stock.OnHand, "sealed units and short ends");
        Length("Left to shoot", "SUMPRODUCT((Stock[For]=\"shoot\")*Stock[Left to shoot])", stock.Left, "on hand, and in the cameras");
    }

    void Forecast()
    {
        Heading("Will it last?");
        foreach (var line in SummaryForecast.Of(source, units))
        {
            if (line.Name is { } name)
            {
                Call(name);
            }

            Line(line.Label, line.Value, line.Format, line.Remark);
        }
    }

    void Money()
    {
        var cost = source.Cost;
        Heading(cost.Currency is { } currency ? $"Money, {currency}" : "Money");
        foreach (var stage in Enum.GetValues<CostStage>())
        {
            Line(
                char.ToUpperInvariant(Codes.Of(stage)[0]) + Codes.Of(stage)[1..],
                CellValue.Calculated($"SUMIFS(Cost[Amount],Cost[Stage],\"{Codes.Of(stage)}\")", (double)cost.TotalAt(stage)),
                CellFormat.Money,
                stage switch
                {
                    CostStage.Bought => "raw stock",
                    CostStage.Ordered => "the lab order, with tax",
                    _ => "exposed and still in a camera, with tax",
                });
        }

        Line("Total", CellValue.Calculated("SUM(Cost[Amount])", (double)cost.Total), CellFormat.Money, "");
        ToTheEnd(cost);
        Line("Lines without a rate", CellValue.Calculated("COUNTIFS(Cost[Amount],\"open\")", cost.Open.Count()), CellFormat.Count, "open: in no sum");
    }

    // Null is open: it cannot be told, and is not nothing.
    void ToTheEnd(CostBook cost)
    {
        var end = source.Books.ToEnd;
        CellValue Open(string formula, decimal? amount) => amount is { } known ? CellValue.Calculated(formula, (double)known) : CellValue.CalculatedWords(formula, "open");
        Call("FilmToCome");
        Line("Film still needed", end.Film is { } film ? units.Length(film) : default(double?), CellFormat.Length, "at the plain average of the forecast; write another figure to try it (FilmToCome)");
        Line("Film lacking", CellValue.Calculated($"MAX(0,FilmToCome-{ForecastStock()})", units.Length(end.Lacking ?? Footage.Zero)), CellFormat.Length, "of that, once the stock is used up");
        Line(
            "Lab to come",
            Open(
                "IF(FilmToCome=\"\",\"open\",IF(FilmToCome=0,0,IF(OR(SUMIFS(Cost[Quantity],Cost[What],\"process\")=0,SUMPRODUCT((Cost[Stage]<>\"bought\")*(Cost[Amount]=\"open\"))>0),\"open\","
                    + $"ROUND(({CellAbove(5)}+{CellAbove(4)})*FilmToCome*FramesPerUnit/FramesPerFoot/SUMIFS(Cost[Quantity],Cost[What],\"process\"),2))))",
                end.Lab),
            CellFormat.Money,
            "what the lab took for a foot so far, for each foot still needed");
        Line(
            "Stock to come",
            Open(
                $"IF(FilmToCome=\"\",\"open\",IF({CellAbove(2)}=0,0,IF(OR(SUMPRODUCT((Stock[For]=\"shoot\")*Stock[Received frames])=0,SUMPRODUCT((Stock[For]=\"shoot\")*(Stock[Unit price]=\"\"))>0),\"open\","
                    + $"ROUND(SUMPRODUCT((Stock[For]=\"shoot\")*Stock[Units]*Stock[Unit price])*{CellAbove(2)}*FramesPerUnit/SUMPRODUCT((Stock[For]=\"shoot\")*Stock[Received frames]),2))))",
                end.Stock),
            CellFormat.Money,
            "what a foot of stock did cost, for each foot lacking");
        Line(
            "At this rate to the end",
            Open($"IF(OR({CellAbove(2)}=\"open\",{CellAbove(1)}=\"open\"),\"open\",{CellAbove(5)}+{CellAbove(2)}+{CellAbove(1)})", end.Total),
            CellFormat.Money,
            cost.Open.Any() ? "at least: lines without a rate are in no sum" : "the total, with lab and stock to come");
    }

    // Short ends too short to be loaded are left out, as the forecast leaves them out.
    string ForecastStock()
    {
        var apart = source.Forecast.Ground.TooShort;
        var left = "SUMPRODUCT((Stock[For]=\"shoot\")*Stock[Left to shoot])";
        return apart == Footage.Zero ? left : string.Create(CultureInfo.InvariantCulture, $"({left}-{apart.Frames}/FramesPerUnit)");
    }

    void Settings()
    {
        var production = source.Shoot.Production;
        Heading("What it is reckoned with");
        Named("Frames a foot", "FramesPerFoot", Exact(units.FramesPerFoot), CellFormat.Plain, production.Gauge.Name);
        Named(
            units.InMetres ? "Frames a metre" : "Frames a foot shown",
            "FramesPerUnit",
            CellValue.Calculated(units.InMetres ? "FramesPerFoot/0.3048" : "FramesPerFoot", units.FramesPerUnit.ToDouble()),
            CellFormat.Plain,
            "what lengths are divided by");
        Named("Projection speed", "ProjectedAt", Exact(production.ProjectedAt.FramesPerSecond), CellFormat.Plain, "frames a second");
        Named("Planned running time", "PlannedSeconds", production.RunningTime is { } time ? Exact(time.Value) : default, CellFormat.Plain, "seconds");
    }

    // A fraction such as 24000/1001 stands as one, so that nothing is lost in writing it down.
    static CellValue Exact(Ratio ratio) => ratio.IsWhole ? (Ratio?)ratio : CellValue.Calculated(ratio.ToString(), ratio.ToDouble());

    void HowToRead()
    {
        Heading("How to read it");
        if (units.InMetres)
        {
            Words("Lengths are metres: frames by the gauge's nominal count to a foot of 0.3048 m. They can be added as they stand.");
        }
        else
        {
            Words($"Lengths are feet. 31 12/{units.FramesPerFoot} reads thirty-one feet and twelve frames: the cell holds 31 and 12/{units.FramesPerFoot} feet, so that lengths can be added as they stand.");
        }

        Words("The sheet Film holds every stretch of film once; all other sheets add it up with formulas. Change a figure there, or a rate on Cost, and the rest follows.");
        Words("Sums above a table are of the rows that a filter shows.");
    }

    string CellAbove(int rows) => string.Create(CultureInfo.InvariantCulture, $"B{_row - rows}");

    void Heading(string words)
    {
        _row += _row > 4 ? 1 : 0;
        writer.Put(_sheet.Cell(_row, 1), words, CellFormat.Words);
        _sheet.Range(_row, 1, _row, 3).Style.Font.SetBold().Font.SetFontColor(SheetWriter.Ink).Fill.SetBackgroundColor(SheetWriter.Band);
        _row++;
    }

    void Length(string label, string formula, Footage length, string remark) =>
        Line(label, CellValue.Calculated(formula, units.Length(length)), CellFormat.Length, remark);

    void Named(string label, string name, CellValue value, CellFormat format, string remark)
    {
        Call(name);
        Line(label, value, format, $"{remark} ({name})");
    }

    // The cell of the line that comes next.
    void Call(string name)
    {
        book.NamedRanges.Add(name, _sheet.Range(_row, 2, _row, 2));
        _name = name;
    }

    void Line(string label, CellValue value, CellFormat format, string remark)
    {
        _labels[_row] = label.Trim();
        writer.Notes.Summary.Add(new LineNote(label.Trim(), value.Formula is { } formula ? LineNote.Labelled(formula, _labels) : null, format, _name));
        _name = null;
        writer.Put(_sheet.Cell(_row, 1), label, CellFormat.Words);
        writer.Put(_sheet.Cell(_row, 2), value, format);
        _sheet.Cell(_row, 2).Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
        writer.Put(_sheet.Cell(_row, 3), remark, CellFormat.Words);
        _sheet.Cell(_row, 3).Style.Font.SetFontColor(SheetWriter.Quiet).Alignment.SetIndent(1);
        _row++;
    }

    void Words(string words)
    {
        _sheet.Range(_row, 1, _row, 3).Merge();
        writer.Put(_sheet.Cell(_row, 1), words, CellFormat.LongWords);
        _sheet.Row(_row).Height = 27;
        _row++;
    }
}
