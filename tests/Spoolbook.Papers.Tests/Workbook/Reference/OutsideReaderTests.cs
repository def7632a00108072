using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Tests.Ledger;

namespace Spoolbook.Papers.Tests.Workbook.Reference;

/// <summary>
/// Opens workbooks as zip and XML, without a spreadsheet library, and finds everything where the reference page says:
/// in the sample, and in shoots of other sizes, since tables grow with their contents.
/// </summary>
public partial class OutsideReaderTests
{
    static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    static readonly ReferenceText Page = new();

    static readonly Dictionary<string, XlsxReader> Books = new LedgerSource[]
    {
        Shoots.Sample,
        Shoots.HalfWay,
        Shoots.Ninety,
        Shoots.Restocked,
        Shoots.WrongStock,
        Shoots.Awkward,
    }.ToDictionary(s => s.Shoot.Production.Code.Value, s => new XlsxReader(Workbooks.Of(s)));

    public static TheoryData<string> Codes => [.. Books.Keys];

    [Theory]
    [MemberData(nameof(Codes))]
    public void Every_sheet_has_its_table_with_its_heads_and_reaches_to_its_last_row(string code)
    {
        Assert.Equal(["Summary", .. Page.Sheets.Select(s => s.On).Distinct(), "Figures"], Books[code].Sheets.Keys);
        Assert.All(Page.Sheets, said =>
        {
            var sheet = Books[code].Tables[said.Table];
            var table = Assert.Single(sheet.Tables);
            Assert.Same(Books[code].Sheets[said.On].Xml, sheet.Xml);
            Assert.StartsWith($"A{sheet.HeadRow}:{said.Columns[^1].Letters}", table.Attribute("ref")!.Value, StringComparison.Ordinal);
            Assert.Equal(said.Name, sheet.Value($"A{sheet.HeadRow - 3}"));
            Assert.Equal(table.Attribute("ref")!.Value, table.Element(Main + "autoFilter")!.Attribute("ref")!.Value);
            Assert.Equal(said.Columns.Select(c => c.Head), table.Descendants(Main + "tableColumn").Select(c => c.Attribute("name")!.Value));
            Assert.All(said.Columns, c => Assert.Equal(c.Head, sheet.Value($"{c.Letters}{sheet.HeadRow}")));
        });
    }

    [Fact]
    public void A_German_workbook_has_the_sheets_and_heads_that_the_page_gives_in_German()
    {
        var german = new XlsxReader(Workbooks.GermanOf(Shoots.Sample));
        Assert.All(Page.Sheets, said =>
        {
            var sheet = german.Tables[said.Table];
            Assert.Equal(said.German, sheet.Value($"A{sheet.HeadRow - 3}"));
            Assert.Equal(said.Columns.Select(c => c.German), said.Columns.Select(c => sheet.Value($"{c.Letters}{sheet.HeadRow}")));
        });
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void Every_cell_of_a_column_is_typed_or_the_formula_that_the_page_gives(string code) => Assert.All(Page.Sheets, said =>
        {
            var sheet = Books[code].Tables[said.Table];
            var columns = sheet.Tables.Single().Descendants(Main + "tableColumn").ToList();
            foreach (var (column, i) in said.Columns.Select((c, i) => (c, i)))
            {
                var allowed = column.Formulas.Select(f => InFile(f, said.Table)).ToList();
                var typed = column.Written.StartsWith("typed", StringComparison.Ordinal);
                var rows = sheet.Rows().Select(r => sheet.Cells.GetValueOrDefault(r[column.Head])?.Formula).ToList();
                var empty = rows.TrueForAll(f => f is null) && rows.Count == 1;
                Assert.All(rows, f => Assert.True(f is null ? typed || empty : allowed.Contains(f), $"{said.Name}!{column.Head}: {f}"));

                // A row typed below is computed like those above it.
                var spread = columns[i].Element(Main + "calculatedColumnFormula")?.Value;
                Assert.Equal(empty || rows.Distinct().Count() > 1 ? null : rows[0], spread);
                var sum = sheet.Cells.GetValueOrDefault($"{column.Letters}{sheet.HeadRow - 1}")?.Formula;
                Assert.Equal(column.Written.Contains("; summed", StringComparison.Ordinal), sum is not null);
                Assert.True(
                    sum is null
                        || sum == $"SUBTOTAL(109,{said.Table}[{column.Head}])"
                        || (column.Shown == "length" && sum.Contains($"SUBTOTAL(109,{said.Table}[", StringComparison.Ordinal)),
                    $"{said.Name}!{column.Head}: {sum}"
                );
            }
        });

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_summary_has_its_lines_with_their_formulas_and_names(string code)
    {
        var book = Books[code];
        var summary = book.Sheets["Figures"];
        var labels = summary
            .Cells.Where(c => c.Key[0] == 'A' && c.Value.Value.Length > 0)
            .ToDictionary(c => RowOf(c.Key), c => c.Value.Value.Trim());
        var figures = summary.Cells.Where(c => c.Key[0] == 'B' && c.Value.Value.Length > 0).ToList();
        Assert.All(figures, figure =>
        {
            var label = labels[RowOf(figure.Key)];
            var line = Page.Summary.Where(l => l.Label == label).ToList();
            var frames = summary.Cells.GetValueOrDefault("C" + RowOf(figure.Key));
            var isEmpty = figure.Value.Formula?.StartsWith("IF(FilmToCome=\"\"", StringComparison.Ordinal) ?? false;
            var formula = isEmpty || frames is { Formula: not null } or { Value.Length: > 0 } ? frames?.Formula : figure.Value.Formula;
            Assert.Contains(line, l => l.Formula == formula || formula is null);
        });

        // Each name is the cell of the figure in its line.
        var names = book.Names.Where(n => !n.Key.StartsWith("LeftOfStock", StringComparison.Ordinal)).ToList();
        Assert.All(names, name =>
            Assert.Contains(Page.Summary, l =>
                l.Name == name.Key
                && l.Label == labels[RowOf(Regex.Match(name.Value, @"^Figures!\$[BC]\$([0-9]+)(?::\$[BC]\$\1)?$").Groups[1].Value)]
            )
        );
        Assert.Equal(
            Page.Summary.Where(l => labels.ContainsValue(l.Label))
                .Select(l => l.Name)
                .Where(n => n.Length > 0)
                .Distinct()
                .Order(StringComparer.Ordinal),
            names.Select(n => n.Key).Order(StringComparer.Ordinal)
        );
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void No_formula_names_a_cell_by_its_address(string code) =>
        Assert.All(Books[code].Sheets.Values.SelectMany(s => s.Cells.Values).Select(c => c.Formula).OfType<string>().Distinct(), formula =>
            Assert.DoesNotMatch(Address(), Quoted().Replace(formula, ""))
        );

    [Theory]
    [MemberData(nameof(Codes))]
    public void Typing_is_checked_from_the_first_row_to_far_below_the_last(string code) => Assert.All(Page.Sheets, said =>
        {
            var sheet = Books[code].Tables[said.Table];
            var last = RowOf(sheet.Tables.Single().Attribute("ref")!.Value.Split(':')[1]);
            var isLast = Page.Sheets.Last(s => s.On == said.On) == said;
            foreach (var column in said.Columns)
            {
                var rule = sheet
                    .Xml.Descendants(Main + "dataValidation")
                    .SingleOrDefault(v =>
                        v.Attribute("sqref")!
                            .Value.Split(' ')
                            .Contains($"{column.Letters}{sheet.HeadRow + 1}:{column.Letters}{last + (isLast ? 500 : 2)}")
                    );
                var choice = Regex.Match(column.Written, "^typed: (`[^;]*`)");
                var least = Regex.Match(column.Written, "^typed: a whole number from ([0-9]+)");
                if (choice.Success)
                {
                    Assert.Equal(
                        (
                            "list",
                            "\""
                                + choice
                                    .Groups[1]
                                    .Value.Replace("`", "", StringComparison.Ordinal)
                                    .Replace(", ", ",", StringComparison.Ordinal)
                                + "\""
                        ),
                        (rule?.Attribute("type")?.Value, rule?.Element(Main + "formula1")?.Value)
                    );
                }
                else if (least.Success)
                {
                    Assert.Equal(
                        ("whole", least.Groups[1].Value),
                        (rule?.Attribute("type")?.Value, rule?.Element(Main + "formula1")?.Value)
                    );
                }
                else
                {
                    Assert.True(
                        rule is null || column.Written.Contains("after a question", StringComparison.Ordinal),
                        $"{said.Name}!{column.Head}"
                    );
                }
            }
        });

    [Theory]
    [MemberData(nameof(Codes))]
    public void Bars_and_alarms_cover_the_whole_of_their_columns(string code) => Assert.All(Page.Sheets, said =>
        {
            var sheet = Books[code].Tables[said.Table];
            var last = RowOf(sheet.Tables.Single().Attribute("ref")!.Value.Split(':')[1]);
            var bars = sheet
                .Xml.Descendants(Main + "conditionalFormatting")
                .Where(f => f.Descendants(Main + "dataBar").Any())
                .Select(f => f.Attribute("sqref")!.Value)
                .Where(range => RowOf(range.Split(':')[0]) == sheet.HeadRow + 1);
            var expected =
                last == sheet.HeadRow + 1
                    ? []
                    : said
                        .Columns.Where(c => c.Written.Contains("; bars", StringComparison.Ordinal))
                        .Select(c => $"{c.Letters}{sheet.HeadRow + 1}:{c.Letters}{last}");
            Assert.Equal(expected.Order(StringComparer.Ordinal), bars.Order(StringComparer.Ordinal));
            Assert.All(
                sheet
                    .Xml.Descendants(Main + "conditionalFormatting")
                    .Select(f => f.Attribute("sqref")!.Value)
                    .Where(range => RowOf(range.Split(':')[0]) == sheet.HeadRow + 1),
                range => Assert.EndsWith(last.ToString(CultureInfo.InvariantCulture), range, StringComparison.Ordinal)
            );
        });

    [Theory]
    [MemberData(nameof(Codes))]
    public void Cells_are_shown_as_the_page_says(string code) => Assert.All(Page.Sheets, said =>
        {
            var book = Books[code];
            var sheet = book.Tables[said.Table];
            foreach (var column in said.Columns.Where(c => c.Shown is not ("words" or "long words")))
            {
                var codes = Regex.Matches(Page.Formats[column.Shown], "`([^`]+)`").Select(m => m.Groups[1].Value).ToList();
                var cells = sheet
                    .Rows()
                    .Select(r => r[column.Head])
                    .Where(a => sheet.Cells.TryGetValue(a, out var cell) && cell.Type == "n" && cell.Value.Length > 0);
                Assert.All(cells, address => Assert.Contains(book.NumberFormat(sheet, address), codes));
            }
        });

    [Theory]
    [MemberData(nameof(Codes))]
    public void Heads_stay_in_sight_and_every_sheet_is_set_up_for_the_paper(string code)
    {
        var book = Books[code];
        foreach (var (name, index) in book.Sheets.Keys.Select((s, i) => (s, i)))
        {
            var xml = book.Sheets[name].Xml;
            var page = xml.Descendants(Main + "pageSetup").Single();
            Assert.Equal("1", page.Attribute("fitToWidth")?.Value ?? "1");
            Assert.Equal("1", xml.Descendants(Main + "pageSetUpPr").Single().Attribute("fitToPage")!.Value);
            Assert.Contains(name, xml.Descendants(Main + "oddFooter").Single().Value, StringComparison.Ordinal);
            if (book.Sheets[name].Tables.Count > 0)
            {
                Assert.Equal("1", xml.Descendants(Main + "pane").Single().Attribute("xSplit")!.Value);
                Assert.Contains(index, book.PrintAreas.Keys);
            }

            // Of several tables the last goes on to other pages.
            if (book.Sheets[name].EachTable.LastOrDefault() is { } last)
            {
                var rows = book.Sheets[name].Tables.Count == 1 ? "$1:$4" : $"${last.HeadRow}:${last.HeadRow}";
                Assert.EndsWith(rows, book.PrintTitles[index], StringComparison.Ordinal);
            }
        }
    }

    // From the form that a spreadsheet shows to the one in the file.
    static string InFile(string formula, string table) => ThisRow().Replace(formula, $"{table}[[#This Row],[$1$2]]");

    static int RowOf(string address) => int.Parse(address.TrimStart([.. "ABCDEFGHIJKLMNOPQRSTUVWXYZ"]), CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\[@(?:\[([^\]]+)\]|([^\[\]]+))\]")]
    private static partial Regex ThisRow();

    [GeneratedRegex("\"[^\"]*\"")]
    private static partial Regex Quoted();

    [GeneratedRegex(
        @"!|(?<![A-Za-z0-9_.])\$?[A-Z]{1,3}\$?[0-9]+(?![A-Za-z0-9_(])|(?<![A-Za-z0-9_.\]])[A-Z0-9]{1,3}:[A-Z0-9]{1,3}(?![A-Za-z0-9_(])"
    )]
    private static partial Regex Address();
}
