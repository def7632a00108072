using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Tests.Ledger;
using Spoolbook.Papers.Wording;
using Spoolbook.Papers.Workbook;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.Tests.Workbook;

/// <summary>
/// Formulas use names, never addresses: with a column before every table, a line before every line of the summary and
/// one before all lines of the cost, each formula reads the same and each cell has the same result.
/// </summary>
public class ShiftTests
{
    const string Before = "Put before";

    static readonly LedgerSource[] Sources = [Shoots.Sample, Shoots.HalfWay, Shoots.Restocked, Shoots.Awkward];

    static readonly Pair[] Pairs = [.. Sources.SelectMany(s => new[] { Pair.Of(s, "en"), Pair.Of(s, "de") })];

    [Fact]
    public void Every_formula_and_its_result_stay_the_same() => Assert.All(Pairs, pair =>
        {
            var (plain, shifted) = (Cells(pair.Plain, 0), Cells(pair.Shifted, 1));
            Assert.True(plain.Count(c => c.Value.Formula is not null) > 50);
            Assert.Equal(plain.Keys, shifted.Keys);
            Assert.All(plain, cell => Assert.Equal(cell.Value, shifted[cell.Key]));
        });

    [Fact]
    public void Every_name_still_is_the_figure_that_it_was() => Assert.All(Pairs, pair =>
        {
            Assert.Equal(pair.Plain.Names.Keys, pair.Shifted.Names.Keys);
            Assert.All(pair.Plain.Names.Keys, name => Assert.Equal(Named(pair.Plain, name), Named(pair.Shifted, name)));
            Assert.All(pair.Plain.Names, name => Assert.NotEqual(name.Value, pair.Shifted.Names[name.Key]));
        });

    [ToolFact("soffice")]
    public void LibreOffice_has_the_same_result_in_every_cell()
    {
        foreach (var (pair, anew) in Pairs.Zip(Office.Recalculate([.. Pairs.Select(p => p.File)])))
        {
            Office.SameAsPreviewed(pair.Shifted, anew);
        }
    }

    // The cells of a workbook by what they are, not by address: the table's row and head, or the place among the labels.
    static Dictionary<(string Sheet, int Row, string Head), XlsxCell> Cells(XlsxReader book, int costRowsBefore)
    {
        var cells = new Dictionary<(string, int, string), XlsxCell>();
        foreach (var (address, cell) in book.Sheets.Values.First().Cells)
        {
            cells[("", RowOf(address), address)] = cell.Value.Length > 0 || cell.Formula is not null ? cell : Nothing;
        }

        var (figuresName, figures) = book.Sheets.Last();
        var lines = figures
            .Cells.Keys.Where(a => a[0] == 'A')
            .Select(a => a[1..])
            .Where(row => figures.Value("A" + row) is { Length: > 0 } label && label != Before);
        foreach (var (row, i) in lines.Select((row, i) => (row, i)))
        {
            foreach (var column in new[] { "A", "B", "C", "D" })
            {
                cells[(figuresName, i, column)] = Of(figures, column + row);
            }
        }

        foreach (var (name, sheet) in book.Tables)
        {
            foreach (var (row, i) in sheet.Rows().Skip(name == "Cost" ? costRowsBefore : 0).Select((row, i) => (row, i)))
            {
                foreach (var (head, address) in row.Where(c => c.Key != Before))
                {
                    cells[(name, i, head)] = Of(sheet, address);
                    cells[(name, -1, head)] = sheet.Cells.GetValueOrDefault($"{address.TrimEnd([.. "0123456789"])}{sheet.HeadRow - 1}")
                        is { Formula: not null } sum
                        ? sum
                        : Nothing;
                }
            }
        }

        return cells;
    }

    static int RowOf(string address) =>
        int.Parse(address.TrimStart([.. "ABCDEFGHIJKLMNOPQRSTUVWXYZ"]), System.Globalization.CultureInfo.InvariantCulture);

    static XlsxCell Nothing => new("", "n", null);

    // An empty cell is written or left out like its neighbours.
    static XlsxCell Of(XlsxSheet sheet, string address) =>
        sheet.Cells.GetValueOrDefault(address) is { } cell && (cell.Value.Length > 0 || cell.Formula is not null) ? cell : Nothing;

    static XlsxCell Named(XlsxReader book, string name)
    {
        var at = book.Names[name].Split('!');
        return Of(book.Sheets[at[0].Trim('\'')], at[1].Split(':')[0].Replace("$", "", StringComparison.Ordinal));
    }

    sealed record Pair(XlsxReader Plain, byte[] File, XlsxReader Shifted)
    {
        public static Pair Of(LedgerSource source, string language)
        {
            var say = new WorkbookTerms(
                Translations.Parse(new HouseTemplates().Find($"words.{language}.txt")!.Text, $"book.head.put-before = {Before}")
            );

            // Bought for nothing, so that it changes no total.
            CostLine first = new()
            {
                Stage = CostStage.Bought,
                Kind = CostKind.Service,
                Name = Before,
                Quantity = 0,
                Unit = CostUnit.Roll,
                Rate = 0,
                Amount = 0,
            };
            var with = source with { Books = source.Books.With(source.Cost with { Lines = [first, .. source.Cost.Lines] }) };
            var sheets = WorkbookSheets.Of(with, say);
            var line = new SummaryLine(Before, (double?)777.25, CellFormat.Plain, "");
            var shifted = new WorkbookSheets(
                sheets.Answers,
                [
                    .. sheets.Pages.Select(p =>
                        p with
                        {
                            Tables = [.. p.Tables.Select(t => t.Behind(Before, CellFormat.Plain, (double?)777.25))],
                        }
                    ),
                ],
                sheets.Figures with
                {
                    Sections = [.. sheets.Figures.Sections.Select(s => s with { Lines = [.. s.Lines.SelectMany(l => new[] { line, l })] })],
                }
            );
            var file = FootageWorkbook.Make(shifted, with, say);
            return new(new XlsxReader(language == "de" ? Workbooks.GermanOf(source) : Workbooks.Of(source)), file, new XlsxReader(file));
        }
    }
}
