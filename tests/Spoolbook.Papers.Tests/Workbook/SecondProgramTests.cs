using System.Globalization;
using System.Text.Json;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Tests.Ledger;

namespace Spoolbook.Papers.Tests.Workbook;

/// <summary>
/// A second outside spreadsheet program, Gnumeric, recalculates every formula: each has the result that we wrote beside
/// it, and the sums agree with the ledger.
/// </summary>
public class SecondProgramTests
{
    static readonly (LedgerSource Source, byte[] File)[] Books =
    [
        .. new[] { Shoots.Sample, Shoots.HalfWay }.Select(s => (s, Workbooks.Of(s))),
    ];

    [ToolFact("ssconvert")]
    public void Gnumeric_has_the_same_result_in_every_cell_and_the_totals_of_the_ledger()
    {
        var folder = Directory.CreateTempSubdirectory("spoolbook");
        try
        {
            foreach (var book in Books)
            {
                var (from, to) = (Path.Combine(folder.FullName, "plain.xlsx"), Path.Combine(folder.FullName, "anew.xlsx"));
                File.WriteAllBytes(from, PlainReferences.Of(book.File));
                var (status, told) = Tools.Run("ssconvert", "--recalc", from, to);
                Assert.True(status == 0, told);
                Compare(book.Source, new XlsxReader(book.File), new XlsxReader(File.ReadAllBytes(to)));
            }
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    static void Compare(LedgerSource source, XlsxReader ours, XlsxReader anew)
    {
        var reckoned = 0;
        foreach (var (name, sheet) in ours.Sheets)
        {
            foreach (var (address, cell) in sheet.Cells.Where(c => c.Value.Formula is not null))
            {
                var theirs = anew.Sheets[name].Value(address);
                var same =
                    cell.Type == "str"
                        ? theirs == cell.Value
                        : double.TryParse(theirs, CultureInfo.InvariantCulture, out var number) && Math.Abs(number - cell.Number) < 1e-7;
                Assert.True(same, $"{name}!{address} ={cell.Formula}: we say {cell.Value}, Gnumeric {theirs}");
                reckoned++;
            }
        }

        Assert.True(reckoned > 100);
        using var ledger = JsonDocument.Parse(LedgerWriter.Write(source));
        var cost = ledger.RootElement.GetProperty("cost");
        Assert.Equal(cost.GetProperty("total").GetRawText(), Row.ToCents(Beside(anew, "Total")));
        Assert.Equal(cost.GetProperty("ordered").GetRawText(), Row.ToCents(Beside(anew, "Ordered")));
        foreach (var (label, key) in new[] { ("Good", "good"), ("Waste", "waste"), ("Exposed", "exposed"), ("Loaded", "loaded") })
        {
            var film = ledger.RootElement.GetProperty("total").GetProperty("film").GetProperty(key).GetProperty("frames").GetRawText();
            Assert.Equal((label, film), (label, Beside(anew, label, "C")));
        }

        Assert.Equal(
            ledger.RootElement.GetProperty("stock").GetProperty("on-hand").GetProperty("frames").GetRawText(),
            Beside(anew, "On hand", "C")
        );
    }

    static string Beside(XlsxReader book, string label, string column = "B")
    {
        var figures = book.Sheets["Figures"];
        return figures.Value(column + figures.Cells.First(c => c.Key[0] == 'A' && c.Value.Value == label).Key[1..]);
    }
}
