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
        writer.Notes.SummaryCalled = _sheet.Name;
        writer.Title(_sheet, production.Title.Value, writer.Words.Fill("subtitle", ("code", production.Code.Value), ("made", source.Made.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture))));
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
            Notice(Say("note.draft"));
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
        Heading(Say("heading.film"));
        Length(Say("line.loaded"), "SUM(Rolls[Loaded])", total.Loaded, Say("remark.loaded"));
        Length(Say("line.good"), "SUM(Rolls[Good])", total.Good, "");
        Length(Say("line.hold"), "SUM(Rolls[Hold])", total.Hold, "");
        Length(Say("line.no-good"), "SUM(Rolls[No good])", total.NoGood, "");
        Length(Say("line.waste"), "SUM(Rolls[Waste])", total.Waste, "");
        foreach (var cause in Enum.GetValues<WasteCause>().Where(c => total.WastedBy(c) > Footage.Zero))
        {
            Length("   " + writer.Words.Fill("line.of-it", ("cause", writer.Words.Code(null, Codes.Of(cause)))), $"SUMPRODUCT((Film[Waste by]=\"{Codes.Of(cause)}\")*Film[Frames])/FramesPerUnit", total.WastedBy(cause), "");
        }

        Length(Say("line.left-over"), "SUM(Rolls[Left over])", total.ShortEnd, Say("remark.left-over"));
        Length(Say("line.exposed"), "SUM(Rolls[Exposed])", total.Exposed, Say("remark.exposed"));
        Line(
            Say("line.frames-unaccounted-for"),
            CellValue.Calculated("ROUND((SUM(Rolls[Loaded])-SUM(Rolls[Exposed])-SUM(Rolls[Left over]))*FramesPerUnit,0)", 0),
            CellFormat.Count,
            Say("remark.unaccounted"));
    }

    void Use()
    {
        var use = source.Stock.Use;
        Heading(Say("heading.how-it-was-used"));
        Line(Say("line.takes"), CellValue.Calculated("SUM(Rolls[Takes])", use.Takes), CellFormat.Count, "");
        Line(Say("line.shots"), CellValue.Calculated("SUM(Takes[New shot])", use.Shots), CellFormat.Count, Say("remark.shots"));
        Line(Say("line.takes-a-shot"), FilmSheet.Ratio("SUM(Rolls[Takes])", CellAbove(1), use.TakesAShot), CellFormat.Seconds, "");
        Line(Say("line.good-screen-time"), CellValue.Calculated("SUM(Rolls[Screen time])", units.ScreenTime(use.Tally.Good)), CellFormat.Clock, Say("remark.screen-time"));
        Line(Say("line.exposed-to-good"), FilmSheet.Ratio("SUM(Rolls[Exposed])", "SUM(Rolls[Good])", use.ExposedToGood), CellFormat.ToOne, Say("remark.exposed-to-good"));
        Line(Say("line.exposed-to-planned"), Planned(use), CellFormat.ToOne, Say("remark.exposed-to-planned"));
        Line(Say("line.waste-rate"), FilmSheet.Ratio("SUM(Rolls[Waste])", "SUM(Rolls[Exposed])", use.WasteRate), CellFormat.Percent, Say("remark.waste-rate"));
    }

    static CellValue Planned(UseOfFilm use) => use.ExposedToPlanned is { } ratio
        ? CellValue.Calculated("SUM(Rolls[Exposed])*FramesPerUnit/(PlannedSeconds*ProjectedAt)", ratio.ToDouble())
        : "no plan";

    void Stock()
    {
        var stock = source.Stock;
        Heading(Say("heading.stock"));
        Length(Say("line.received"), "SUMPRODUCT((Stock[For]=\"shoot\")*Stock[Received])", new(stock.Counted.Sum(l => l.Received.Frames)), Say("remark.received"));
        Length(Say("line.on-hand"), "SUMPRODUCT((Stock[For]=\"shoot\")*Stock[On hand])", stock.OnHand, Say("remark.on-hand"));
        Length(Say("line.left-to-shoot"), "SUMPRODUCT((Stock[For]=\"shoot\")*Stock[Left to shoot])", stock.Left, Say("remark.left-to-shoot"));
    }

    void Forecast()
    {
        Heading(Say("heading.will-it-last"));
        foreach (var line in SummaryForecast.Of(source, units, writer.Words))
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
        Heading(cost.Currency is { } currency ? writer.Words.Fill("heading.money-in", ("currency", currency)) : Say("heading.money"));
        foreach (var stage in Enum.GetValues<CostStage>())
        {
            Line(
                Say("line." + Codes.Of(stage)),
                CellValue.Calculated($"SUMIFS(Cost[Amount],Cost[Stage],\"{Codes.Of(stage)}\")", (double)cost.TotalAt(stage)),
                CellFormat.Money,
                stage switch
                {
                    CostStage.Bought => Say("remark.bought"),
                    CostStage.Ordered => Say("remark.ordered"),
                    _ => Say("remark.committed"),
                });
        }

        Line(Say("line.total"), CellValue.Calculated("SUM(Cost[Amount])", (double)cost.Total), CellFormat.Money, "");
        ToTheEnd(cost);
        Line(Say("line.lines-without-a-rate"), CellValue.Calculated("COUNTIFS(Cost[Amount],\"open\")", cost.Open.Count()), CellFormat.Count, Say("remark.no-rate"));
    }

    // Null is open: it cannot be told, and is not nothing.
    void ToTheEnd(CostBook cost)
    {
        var end = source.Books.ToEnd;
        CellValue Open(string formula, decimal? amount) => amount is { } known ? CellValue.Calculated(formula, (double)known) : CellValue.CalculatedWords(formula, "open");
        Call("FilmToCome");
        Line(Say("line.film-still-needed"), end.Film is { } film ? units.Length(film) : default(double?), CellFormat.Length, Say("remark.film-needed"));
        Line(Say("line.film-lacking"), CellValue.Calculated($"MAX(0,FilmToCome-{ForecastStock()})", units.Length(end.Lacking ?? Footage.Zero)), CellFormat.Length, Say("remark.film-lacking"));
        Line(
            Say("line.lab-to-come"),
            Open(
                "IF(FilmToCome=\"\",\"open\",IF(FilmToCome=0,0,IF(OR(SUMIFS(Cost[Quantity],Cost[What],\"process\")=0,SUMPRODUCT((Cost[Stage]<>\"bought\")*(Cost[Amount]=\"open\"))>0),\"open\","
                    + $"ROUND(({CellAbove(5)}+{CellAbove(4)})*FilmToCome*FramesPerUnit/FramesPerFoot/(SUMIFS(Cost[Quantity],Cost[What],\"process\",Cost[Unit],\"foot\")+SUMIFS(Cost[Quantity],Cost[What],\"process\",Cost[Unit],\"metre\")/0.3048),2))))",
                end.Lab),
            CellFormat.Money,
            Say("remark.lab-to-come"));
        Line(
            Say("line.stock-to-come"),
            Open(
                $"IF(FilmToCome=\"\",\"open\",IF({CellAbove(2)}=0,0,IF(OR(SUMPRODUCT((Stock[For]=\"shoot\")*Stock[Received frames])=0,SUMPRODUCT((Stock[For]=\"shoot\")*(Stock[Unit price]=\"\"))>0),\"open\","
                    + $"ROUND(SUMPRODUCT((Stock[For]=\"shoot\")*Stock[Units]*Stock[Unit price])*{CellAbove(2)}*FramesPerUnit/SUMPRODUCT((Stock[For]=\"shoot\")*Stock[Received frames]),2))))",
                end.Stock),
            CellFormat.Money,
            Say("remark.stock-to-come"));
        Line(
            Say("line.at-this-rate-to-the-end"),
            Open($"IF(OR({CellAbove(2)}=\"open\",{CellAbove(1)}=\"open\"),\"open\",{CellAbove(5)}+{CellAbove(2)}+{CellAbove(1)})", end.Total),
            CellFormat.Money,
            cost.Open.Any() ? Say("remark.to-the-end-at-least") : Say("remark.to-the-end"));
    }

    // Short ends too short to be loaded are left out, as the forecast leaves them out.
    string ForecastStock()
    {
        var apart = source.Forecast.Input.TooShort;
        var left = "SUMPRODUCT((Stock[For]=\"shoot\")*Stock[Left to shoot])";
        return apart == Footage.Zero ? left : string.Create(CultureInfo.InvariantCulture, $"({left}-{apart.Frames}/FramesPerUnit)");
    }

    void Settings()
    {
        var production = source.Shoot.Production;
        Heading(Say("heading.what-it-is-reckoned-with"));
        Named(Say("line.frames-a-foot"), "FramesPerFoot", Exact(units.FramesPerFoot), CellFormat.Plain, production.Gauge.Name);
        Named(
            Say(units.InMetres ? "line.frames-a-metre" : "line.frames-a-foot-shown"),
            "FramesPerUnit",
            CellValue.Calculated(units.InMetres ? "FramesPerFoot/0.3048" : "FramesPerFoot", units.FramesPerUnit.ToDouble()),
            CellFormat.Plain,
            Say("remark.frames-per-unit"));
        Named(Say("line.projection-speed"), "ProjectedAt", Exact(production.ProjectedAt.FramesPerSecond), CellFormat.Plain, Say("remark.projection-speed"));
        Named(Say("line.planned-running-time"), "PlannedSeconds", production.RunningTime is { } time ? Exact(time.Value) : default, CellFormat.Plain, Say("remark.running-time"));
    }

    // A fraction such as 24000/1001 stands as one, so that nothing is lost in writing it down.
    static CellValue Exact(Ratio ratio) => ratio.IsWhole ? (Ratio?)ratio : CellValue.Calculated(ratio.ToString(), ratio.ToDouble());

    void HowToRead()
    {
        Heading(Say("heading.how-to-read-it"));
        if (units.InMetres)
        {
            Words(Say("note.metres"));
        }
        else
        {
            Words(writer.Words.Fill("note.feet", ("frames", units.FramesPerFoot.ToString())));
        }

        Words(Say("note.film"));
        Words(Say("note.sums"));
    }

    string Say(string key) => writer.Words[key];

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
        writer.Put(_sheet.Cell(_row, 2), value.Text is { Length: > 0 } code ? value.Saying(writer.Words.Code(null, code)) : value, format);
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
