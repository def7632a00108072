using System.Text.Json;
using CsCheck;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Tests.Ledger;
using Spoolbook.Papers.Workbook;
using Spoolbook.Reading.Files;

namespace Spoolbook.Papers.Tests.Workbook;

/// <summary>LibreOffice reckons every formula anew, and each cell agrees with the ledger to the frame and the cent.</summary>
public class RecalculationTests
{
    const int HowMany = 30;

    [OfficeFact]
    public void The_sample_agrees_with_its_ledger() => Compare(Shoots.Sample);

    [OfficeFact]
    public void An_awkward_shoot_agrees_with_its_ledger() => Compare(Shoots.Awkward);

    [OfficeFact]
    public void Shoots_drawn_by_lot_agree_with_their_ledgers()
    {
        // A fixed seed: one conversion of all the files at once, since starting LibreOffice is what takes time.
        var drawn = new List<LedgerSource>();
        GeneratedShoots.Yaml.Array[HowMany].Sample(yamls => { drawn = [.. yamls.Select(y => Shoots.Of(TextFiles.OneFile(y)))]; }, seed: "0000000000A0", iter: 1, threads: 1);
        Assert.Equal(HowMany, drawn.Count);
        Compare([.. drawn]);
    }

    static void Compare(params LedgerSource[] sources)
    {
        var files = sources.Select(FootageWorkbook.Make).ToList();
        var anew = Office.Recalculate(files);
        for (var i = 0; i < sources.Length; i++)
        {
            SameAsPreviewed(new XlsxReader(files[i]), anew[i]);
            using var ledger = JsonDocument.Parse(LedgerWriter.Write(sources[i]));
            new LedgerComparison(anew[i], ledger.RootElement, sources[i]).Run();
        }
    }

    static void SameAsPreviewed(XlsxReader ours, XlsxReader anew)
    {
        foreach (var (name, sheet) in ours.Sheets)
        {
            foreach (var (address, cell) in sheet.Cells.Where(c => c.Value.Formula is not null))
            {
                var reckoned = anew.Sheets[name].Cells.GetValueOrDefault(address);
                var what = $"{name}!{address} ={cell.Formula}: we say {cell.Value}, LibreOffice {reckoned?.Value}";
                Assert.True(cell.Type == "str" ? (reckoned?.Value ?? "") == cell.Value : reckoned?.Type == "n" && Math.Abs(reckoned.Number - cell.Number) < 1e-7, what);
            }
        }
    }
}
