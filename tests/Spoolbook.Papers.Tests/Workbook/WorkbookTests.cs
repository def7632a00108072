using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Tests.Ledger;
using Spoolbook.Papers.Workbook;

namespace Spoolbook.Papers.Tests.Workbook;

public class WorkbookTests
{
    static readonly byte[] SampleFile = Workbooks.Of(Shoots.Sample);
    static readonly byte[] AwkwardFile = Workbooks.Of(Shoots.Awkward);
    static readonly XlsxReader Sample = new(SampleFile);
    static readonly XlsxReader Awkward = new(AwkwardFile);

    [Fact]
    public void The_sheets_are_in_the_order_in_which_a_producer_looks() =>
        Assert.Equal(
            [
                "Summary",
                "Rolls",
                "Takes",
                "Days",
                "Scenes",
                "Shots",
                "Lots",
                "Bodies",
                "Stock",
                "Loads",
                "Short ends",
                "Stock log",
                "Cost",
                "Forecast",
                "Findings",
                "Film",
            ],
            Sample.Sheets.Keys
        );

    [Fact]
    public void Every_sheet_but_the_summary_is_a_named_table() =>
        Assert.Equal(
            [
                "Rolls",
                "Takes",
                "Days",
                "Scenes",
                "Shots",
                "Lots",
                "Bodies",
                "Stock",
                "Loads",
                "ShortEnds",
                "StockLog",
                "Cost",
                "Forecast",
                "Findings",
                "Film",
            ],
            Sample.Sheets.Values.Skip(1).Select(s => s.TableName)
        );

    [Fact]
    public void A_figure_that_another_formula_looks_at_has_a_name() =>
        Assert.Equal(
            [
                "CostBought",
                "CostCommitted",
                "CostOrdered",
                "CostTotal",
                "FilmLacking",
                "FilmOfShotsGot",
                "FilmToCome",
                "FramesPerFoot",
                "FramesPerUnit",
                "LabToCome",
                "LackingAt50",
                "LackingAt80",
                "LackingAt95",
                "LossRate",
                "NeededAt50",
                "NeededAt80",
                "NeededAt95",
                "NeededAtAverage",
                "PlannedAtOwnRatio",
                "PlannedSeconds",
                "ProjectedAt",
                "ShotsGot",
                "ShotsLeft",
                "ShotsTaken",
                "StockToCome",
                "StockToShoot",
                "TooShort",
                "UnitLength",
            ],
            Sample.Names.Keys.Order(StringComparer.Ordinal)
        );

    [Fact]
    public void No_name_is_a_table_s_too() =>
        Assert.Empty(Sample.Names.Keys.Intersect(Sample.Sheets.Values.Skip(1).Select(s => s.TableName), StringComparer.OrdinalIgnoreCase));

    [Fact]
    public void Heads_are_frozen_and_printed_on_every_page()
    {
        Assert.All(Sample.Sheets.Values, s =>
            Assert.Contains(s.Xml.Descendants(), e =>
                e.Name.LocalName == "pane" && e.Attribute("state")?.Value is "frozen" or "frozenSplit"
            )
        );
        Assert.All(Sample.Sheets.Values.Skip(1), s =>
            Assert.Contains(s.Xml.Descendants(), e => e.Name.LocalName == "pageSetup" && e.Attribute("orientation")?.Value == "landscape")
        );
        Assert.All(Sample.Sheets.Values, s =>
            Assert.Contains("&P", s.Xml.Descendants().Single(e => e.Name.LocalName == "oddFooter").Value, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void The_foot_of_a_printed_page_is_below_the_table_and_is_not_cut_off() => Assert.All(Sample.Sheets.Values, s =>
        {
            var margins = s.Xml.Descendants().Single(e => e.Name.LocalName == "pageMargins");
            double Inches(string side) => double.Parse(margins.Attribute(side)!.Value, System.Globalization.CultureInfo.InvariantCulture);
            Assert.True(Inches("footer") + 0.3 < Inches("bottom") + 0.01, "the foot needs a line's height");
        });

    [Fact]
    public void Every_formula_has_the_value_that_a_previewer_shows() =>
        Assert.All(Sample.Sheets.Values.SelectMany(s => s.Cells.Values).Where(c => c.Formula is not null), c =>
            Assert.True(c.Type == "str" || c.Value.Length > 0)
        );

    [Fact]
    public void Totals_are_formulas_over_the_tables()
    {
        var rolls = Sample.Sheets["Rolls"];
        Assert.Contains(rolls.Cells.Values, c => c.Formula == "SUBTOTAL(109,Rolls[Good])");
        var row = rolls.Rows().First();
        Assert.Equal(
            "Rolls[[#This Row],[Good]]+Rolls[[#This Row],[Hold]]+Rolls[[#This Row],[No good]]+Rolls[[#This Row],[Waste]]",
            rolls.Cells[row["Exposed"]].Formula
        );
    }

    [Fact]
    public void Words_that_look_like_formulas_stay_words()
    {
        var takes = Awkward.Sheets["Takes"];
        var remarks = takes
            .Rows()
            .Select(r => takes.Cells.GetValueOrDefault(r["Remarks"]))
            .OfType<XlsxCell>()
            .Where(c => c.Value.Length > 0)
            .ToList();
        Assert.Equal(["=SUM(A1:A9)", "-1", "+cmd|' /C calc'!A0"], remarks.Take(3).Select(c => c.Value));
        Assert.All(remarks, c => Assert.Equal((null, "s"), (c.Formula, c.Type)));
        Assert.Contains(takes.Cells.Values, c => c.Value == "7*");
    }

    [Fact]
    public void Two_runs_give_the_same_bytes()
    {
        Assert.Equal(SampleFile, FootageWorkbook.Make(Shoots.Sample, Workbooks.English));
        Assert.Equal(AwkwardFile, FootageWorkbook.Make(Shoots.Awkward, Workbooks.English));
        Assert.Equal(Workbooks.GermanOf(Shoots.Sample), FootageWorkbook.Make(Shoots.Sample, Workbooks.German));
    }

    [Fact]
    public void The_day_of_making_changes_no_figure()
    {
        var later = new XlsxReader(Workbooks.Of(Shoots.Sample with { Made = Shoots.Made.AddDays(40) }));
        Assert.Equal(Sample.Sheets["Rolls"].Cells, later.Sheets["Rolls"].Cells);
    }

    [Fact]
    public void The_Open_XML_validator_finds_nothing()
    {
        foreach (var file in new[] { SampleFile, AwkwardFile, Workbooks.Of(Empty()) })
        {
            using var document = SpreadsheetDocument.Open(new MemoryStream(file), isEditable: false);
            var faults = new OpenXmlValidator(DocumentFormat.OpenXml.FileFormatVersions.Office2013).Validate(document);
            Assert.Empty(faults.Select(f => $"{f.Part?.Uri} {f.Path?.XPath}: {f.Description}"));
        }
    }

    [Fact]
    public void A_production_with_nothing_in_it_still_makes_a_workbook() =>
        Assert.Equal(16, new XlsxReader(Workbooks.Of(Empty())).Sheets.Count);

    static LedgerSource Empty() => Shoots.Of(Reading.Files.TextFiles.OneFile("spoolbook: 1\ntitle: Nothing yet\ncode: NIL\n"));
}
