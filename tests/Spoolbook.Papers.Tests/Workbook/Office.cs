using System.IO.Compression;
using System.Text.RegularExpressions;

namespace Spoolbook.Papers.Tests.Workbook;

/// <summary>LibreOffice as an outside judge of our formulas.</summary>
static partial class Office
{
    /// <summary>The workbooks recalculated, with all our own results of formulas removed first.</summary>
    public static IReadOnlyList<XlsxReader> Recalculate(IReadOnlyList<byte[]> workbooks)
    {
        var folder = Directory.CreateTempSubdirectory("spoolbook");
        try
        {
            var names = workbooks.Select((_, i) => Path.Combine(folder.FullName, $"w{i}.xlsx")).ToList();
            foreach (var (name, book) in names.Zip(workbooks))
            {
                File.WriteAllBytes(name, WithoutCaches(book));
            }

            Run(folder.FullName, "xlsx", names);
            return
            [
                .. names.Select(name => new XlsxReader(File.ReadAllBytes(Path.Combine(folder.FullName, "out", Path.GetFileName(name))))),
            ];
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>Compares LibreOffice's results with ours beside each formula.</summary>
    public static void SameAsPreviewed(XlsxReader ours, XlsxReader anew)
    {
        foreach (var (name, sheet) in ours.Sheets)
        {
            foreach (var (address, cell) in sheet.Cells.Where(c => c.Value.Formula is not null))
            {
                var reckoned = anew.Sheets[name].Cells.GetValueOrDefault(address);
                var what = $"{name}!{address} ={cell.Formula}: we say {cell.Value}, LibreOffice {reckoned?.Value}";
                Assert.True(
                    cell.Type == "str"
                        ? (reckoned?.Value ?? "") == cell.Value
                        : reckoned?.Type == "n" && Math.Abs(reckoned.Number - cell.Number) < 1e-7,
                    what
                );
            }
        }
    }

    /// <summary>A workbook as LibreOffice saves it.</summary>
    /// <param name="filter">The kind of file and its options, as for <c>--convert-to</c>.</param>
    public static byte[] Saved(byte[] workbook, string ending, string filter)
    {
        var folder = Directory.CreateTempSubdirectory("spoolbook");
        try
        {
            var name = Path.Combine(folder.FullName, "w.xlsx");
            File.WriteAllBytes(name, workbook);
            Run(folder.FullName, filter, [name]);
            return File.ReadAllBytes(Directory.EnumerateFiles(Path.Combine(folder.FullName, "out"), "*." + ending).Single());
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    static void Run(string folder, string filter, IEnumerable<string> files)
    {
        string[] arguments =
        [
            "--headless",
            $"-env:UserInstallation=file://{folder}/profile",
            "--convert-to",
            filter,
            "--outdir",
            Path.Combine(folder, "out"),
            .. files,
        ];
        var (status, output) = Tools.Run("soffice", arguments);
        Assert.True(status == 0, output);
    }

    static byte[] WithoutCaches(byte[] workbook)
    {
        using var bytes = new MemoryStream();
        bytes.Write(workbook);
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Update, leaveOpen: true))
        {
            foreach (
                var entry in zip
                    .Entries.Where(e =>
                        e.FullName.StartsWith("xl/worksheets/", StringComparison.Ordinal)
                        && e.Name.EndsWith(".xml", StringComparison.Ordinal)
                    )
                    .ToList()
            )
            {
                Rewrite(entry, xml => Cache().Replace(xml, "$1"));
            }
        }

        return bytes.ToArray();
    }

    static void Rewrite(ZipArchiveEntry entry, Func<string, string> change)
    {
        using var stream = entry.Open();
        using var reader = new StreamReader(stream, leaveOpen: true);
        var text = change(reader.ReadToEnd());
        stream.SetLength(0);
        using var writer = new StreamWriter(stream);
        writer.Write(text);
    }

    [GeneratedRegex("(</f>)(?:<v>[^<]*</v>|<v />)")]
    private static partial Regex Cache();
}
