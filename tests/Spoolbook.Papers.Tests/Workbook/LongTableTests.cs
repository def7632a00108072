using System.Globalization;
using System.Text;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Tests.Ledger;
using Spoolbook.Reading.Files;

namespace Spoolbook.Papers.Tests.Workbook;

/// <summary>A list of takes so long that its end is written without the spreadsheet library.</summary>
public class LongTableTests
{
    const int Rolls = 10;
    const int OnRoll = 130;
    const string LooksLikeAFormula = "=1+1, said the board";
    const string LooksLikeAnEscape = "can _x0041_ and _";

    static readonly LedgerSource Shoot = Shoots.Of(TextFiles.OneFile(Yaml()));
    static readonly byte[] File = Workbooks.Of(Shoot);
    static readonly XlsxReader Book = new(File);

    [Fact]
    public void Every_take_is_in_the_table_in_its_order()
    {
        var takes = Book.Tables["Takes"];
        var found = takes.Rows().Select(row => string.Join(' ', Heads.Select(head => Read(takes.Value(row[head])))));
        var wanted =
            from n in Enumerable.Range(0, Rolls * OnRoll)
            let roll = string.Create(CultureInfo.InvariantCulture, $"R{(n / OnRoll) + 1}")
            let take = string.Create(CultureInfo.InvariantCulture, $"{(n / 3) + 1} A {(n % 3) + 1} {Mark(n)} {Note(n)}")
            select roll + " " + take;
        Assert.Equal(wanted, found);
    }

    [Fact]
    public void The_last_row_reckons_with_the_formulas_of_the_first()
    {
        foreach (var table in new[] { Book.Tables["Takes"], Book.Tables["Film"] })
        {
            var (first, last) = (table.Rows().First(), table.Rows().Last());
            Assert.All(first, cell => Assert.Equal(Formula(table, cell.Value), Formula(table, last[cell.Key])));
        }
    }

    [Fact]
    public void A_column_looks_the_same_from_top_to_bottom()
    {
        var takes = Book.Tables["Takes"];
        var rows = takes.Rows().ToList();
        foreach (var head in rows[0].Keys.Where(h => takes.Value(rows[0][h]).Length > 0 && takes.Value(rows[^1][h]).Length > 0))
        {
            Assert.Equal(Book.NumberFormat(takes, rows[0][head]), Book.NumberFormat(takes, rows[^1][head]));
        }
    }

    [Fact]
    public void Words_that_look_like_a_formula_stay_words_when_they_are_edited()
    {
        var takes = Book.Tables["Takes"];
        var quoted = takes.Rows().Select(row => row["Remarks"]).Where(at => takes.Value(at) == LooksLikeAFormula).ToList();
        Assert.True(quoted.Count > 1);
        using var document = SpreadsheetDocument.Open(new MemoryStream(File), isEditable: false);
        var looks = document.WorkbookPart!.WorkbookStylesPart!.Stylesheet.CellFormats!.ChildElements;
        var cells = takes.Xml.Descendants().Where(c => c.Name.LocalName == "c").ToDictionary(c => c.Attribute("r")!.Value);
        Assert.All(quoted, at =>
        {
            var look = int.Parse(cells[at].Attribute("s")!.Value, CultureInfo.InvariantCulture);
            Assert.True(((DocumentFormat.OpenXml.Spreadsheet.CellFormat)looks[look]).QuotePrefix!.Value);
        });
    }

    [Fact]
    public void The_Open_XML_validator_finds_nothing()
    {
        using var document = SpreadsheetDocument.Open(new MemoryStream(File), isEditable: false);
        var faults = new OpenXmlValidator(DocumentFormat.OpenXml.FileFormatVersions.Office2013).Validate(document);
        Assert.Empty(faults.Select(f => $"{f.Part?.Uri} {f.Path?.XPath}: {f.Description}"));
    }

    [ToolFact("soffice")]
    public void LibreOffice_comes_to_every_result_that_the_file_shows() =>
        Office.SameAsPreviewed(Book, Office.Recalculate([File]).Single());

    static readonly string[] Heads = ["Roll", "Scene", "Shot", "Take", "Mark", "Remarks"];

    // ECMA-376, 22.9.2.19: _x005F_ is an underscore that is no escape.
    static string Read(string text) => text.Replace("_x005F_", "_", StringComparison.Ordinal);

    static string Formula(XlsxSheet sheet, string address) => sheet.Cells.GetValueOrDefault(address)?.Formula ?? "";

    static string Mark(int n) => n % 3 == 2 ? "G" : "NG";

    static string Note(int n) =>
        n is 1100 or 1200 ? LooksLikeAFormula
        : n == 1250 ? LooksLikeAnEscape
        : n % 50 == 0 ? "gate checked"
        : "";

    static string Yaml()
    {
        var yaml = new StringBuilder(
            """
            spoolbook: 1
            title: The Long Count
            code: COUNT
            lots:
              - {lot: D, stock: 250 D, ei: 250, balance: daylight, process: ecn-2, length: 100ft, units: 10}
            bodies:
              - {body: B1, speeds: [24], shutter: 170}
            rolls:

            """
        );
        for (var roll = 0; roll < Rolls; roll++)
        {
            yaml.Append(CultureInfo.InvariantCulture, $"  - roll: R{roll + 1}\n    lot: D\n    unit: {roll + 1}\n    body: B1\n")
                .Append(
                    CultureInfo.InvariantCulture,
                    $"    load: {{on: 2026-10-{roll + 1:00} 09:00, light: subdued, head: 4+00}}\n    log:\n"
                );
            for (var n = roll * OnRoll; n < (roll + 1) * OnRoll; n++)
            {
                var to = 160 + (28 * (n - (roll * OnRoll) + 1));
                yaml.Append(CultureInfo.InvariantCulture, $"      - take: {{scene: {(n / 3) + 1}, shot: A, take: {(n % 3) + 1}, ")
                    .Append(CultureInfo.InvariantCulture, $"to: {to / 40}+{to % 40:00}, mark: {(Mark(n) == "G" ? "good" : "ng")}")
                    .Append(Note(n) is { Length: > 0 } note ? $", note: \"{note}\"}}\n" : "}\n");
            }

            yaml.Append("      - run-off: {to: 100+00, lens: capped}\n")
                .Append(CultureInfo.InvariantCulture, $"    unload: {{on: 2026-10-{roll + 1:00} 16:00, light: subdued, tail: 2+00}}\n");
        }

        return yaml.ToString();
    }
}
