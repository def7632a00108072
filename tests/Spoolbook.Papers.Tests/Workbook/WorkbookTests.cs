using System.Text.RegularExpressions;
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
            ["Summary", "Cost", "Days", "Rolls", "Takes", "Stock", "Use of film", "Findings", "Film", "Figures"],
            Sample.Sheets.Keys
        );

    [Fact]
    public void What_is_read_together_is_on_one_sheet() =>
        Assert.Equal(
            [
                "Cost",
                "Days",
                "Forecast",
                "StockLine",
                "Rolls",
                "Takes",
                "StockKinds",
                "Stock",
                "StockLog",
                "ShortEnds",
                "Loads",
                "Accounts",
                "Scenes",
                "Lots",
                "Bodies",
                "Shots",
                "Findings",
                "Film",
            ],
            Sample.Tables.Keys
        );

    [Fact]
    public void A_process_is_written_as_a_lab_writes_it()
    {
        Assert.Equal(["ECN-2", "B&W REVERSAL"], Column("Rolls", "Process").Distinct());
        Assert.Equal(["ECN-2", "B&W REVERSAL"], Column("Cost", "Name").Where(name => name.Length > 0).Distinct());

        static IEnumerable<string> Column(string table, string head) =>
            Sample.Tables[table].Rows().Select(row => Sample.Tables[table].Value(row[head]));
    }

    [Fact]
    public void A_figure_that_another_formula_looks_at_has_a_name() =>
        Assert.Equal(
            [
                "AverageShot",
                "CostAtTheEnd",
                "CostBought",
                "CostCommitted",
                "CostOrdered",
                "CostTotal",
                "FilmBoughtForPractice",
                "FilmCame",
                "FilmExposed",
                "FilmFromNoCan",
                "FilmGood",
                "FilmHeld",
                "FilmInAll",
                "FilmLacking",
                "FilmLeftOver",
                "FilmLeftToShoot",
                "FilmLoaded",
                "FilmNoGood",
                "FilmOfShotsGot",
                "FilmOnHand",
                "FilmReceived",
                "FilmRemeasured",
                "FilmToCome",
                "FilmUnit",
                "FilmWasted",
                "FilmWastedByEnd",
                "FilmWastedByFog",
                "FilmWastedByHead",
                "FilmWastedByRunOff",
                "FilmWastedByTail",
                "FilmWastedByTest",
                "FramesPerFoot",
                "FramesPerUnit",
                "LabToCome",
                "LackingAt50",
                "LackingAt80",
                "LackingAt95",
                "LackingAtAverage",
                "LeftOfStock1",
                "LeftOfStock2",
                "LeftOfStock3",
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
        Assert.Empty(Sample.Names.Keys.Intersect(Sample.Tables.Keys, StringComparer.OrdinalIgnoreCase));

    [Fact]
    public void Heads_are_frozen_and_printed_on_every_page()
    {
        Assert.All(Sample.Sheets.Values.Skip(1), s =>
            Assert.Contains(s.Xml.Descendants(), e =>
                e.Name.LocalName == "pane" && e.Attribute("state")?.Value is "frozen" or "frozenSplit"
            )
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
        var rolls = Sample.Tables["Rolls"];
        Assert.Contains(rolls.Cells.Values, c => c.Formula == "SUBTOTAL(109,Rolls[Takes])");
        var row = rolls.Rows().First();
        Assert.Equal(
            "Rolls[[#This Row],[Good frames]]+Rolls[[#This Row],[Hold frames]]+Rolls[[#This Row],[No good frames]]"
                + "+Rolls[[#This Row],[Waste frames]]",
            rolls.Cells[row["Exposed frames"]].Formula
        );
    }

    [Fact]
    public void A_length_reads_in_feet_and_frames_and_adds_up_by_its_frames()
    {
        var rolls = Sample.Tables["Rolls"];
        var row = rolls.Rows().First();
        Assert.Equal(("38+04", "str"), (rolls.Cells[row["Good"]].Value, rolls.Cells[row["Good"]].Type));
        Assert.Equal(((38 * 40) + 4).ToString(System.Globalization.CultureInfo.InvariantCulture), rolls.Value(row["Good frames"]));
        var sum = rolls.Cells[row["Good"].TrimEnd([.. "0123456789"]) + "3"];
        Assert.Equal("220+12", sum.Value);
        Assert.Contains("SUBTOTAL(109,Rolls[Good frames])", sum.Formula, StringComparison.Ordinal);
    }

    [Fact]
    public void In_metres_each_account_adds_up_as_it_is_printed()
    {
        var book = new XlsxReader(Workbooks.Of(Shoots.InMetres));
        static long Printed(XlsxSheet sheet, string address) => (long)Math.Round(sheet.Cells[address].Number * 100);
        foreach (var sheet in new[] { "Rolls", "Days", "Scenes", "Lots", "Bodies" }.Select(t => book.Tables[t]))
        {
            foreach (var row in sheet.Rows())
            {
                Assert.Equal(
                    Printed(sheet, row["Exposed"]),
                    new[] { "Good", "Hold", "No good", "Waste" }.Sum(head => Printed(sheet, row[head]))
                );
            }
        }

        var rolls = book.Tables["Rolls"];
        foreach (var head in new[] { "Good", "Hold", "No good", "Waste" })
        {
            var total = rolls.Rows().Sum(row => Printed(rolls, row[head]));
            Assert.Equal(total, book.Tables["Days"].Rows().Sum(row => Printed(book.Tables["Days"], row[head])));
        }
    }

    [Fact]
    public void The_first_sheet_has_a_chart_of_the_stock_and_one_of_the_accounts()
    {
        var charts = Sample.Charts.ToList();
        Assert.Equal(2, charts.Count);
        var (stock, accounts) = (Sample.Tables["StockLine"], Sample.Tables["Accounts"]);
        static string Range(string sheet, XlsxSheet table, string head) =>
            $"'{sheet}'!${Regex.Replace(table.Rows().First()[head], "([0-9]+)", "$$$1")}:"
            + $"${Regex.Replace(table.Rows().Last()[head], "([0-9]+)", "$$$1")}";
        foreach (var head in new[] { "Evening", "Film left", "50 % sure", "80 % sure", "95 % sure" })
        {
            Assert.Contains(Range("Days", stock, head), charts[0]);
        }

        Assert.Contains(Range("Use of film", accounts, "In the chart"), charts[1]);
    }

    [Fact]
    public void What_only_leads_to_a_figure_is_not_printed()
    {
        var takes = Sample.Tables["Takes"].Rows().First();
        var last = Sample.PrintAreas[Sample.Sheets.Keys.ToList().IndexOf("Takes")].Split(':')[1].Trim('$').Split('$')[0];
        Assert.Equal(last, takes["Remarks"].TrimEnd([.. "0123456789"]));
        Assert.All(["From frame", "To frame", "Frames", "Scene and shot", "Good frames", "New shot"], head =>
            Assert.True(string.CompareOrdinal(takes[head].TrimEnd([.. "0123456789"]), last) > 0, head)
        );
    }

    [ToolFact("soffice")]
    public void The_sample_prints_on_twelve_pages()
    {
        var pdf = Office.Saved(SampleFile, "pdf", "pdf");
        using var document = UglyToad.PdfPig.PdfDocument.Open(pdf);
        Assert.InRange(document.NumberOfPages, 10, 13);
    }

    [Fact]
    public void Words_that_look_like_formulas_stay_words()
    {
        var takes = Awkward.Tables["Takes"];
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
        Assert.Equal(10, new XlsxReader(Workbooks.Of(Empty())).Sheets.Count);

    static LedgerSource Empty() => Shoots.Of(Reading.Files.TextFiles.OneFile("spoolbook: 1\ntitle: Nothing yet\ncode: NIL\n"));
}
