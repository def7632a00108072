using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// Rewrites what ClosedXML 0.95.4 saves, so that the same books give the same bytes (it draws names and ids at random
/// and stamps times), previewers see numbers (it saves none), the heads repeat on paper (it writes their rows in a form
/// that no program reads), and the Open XML validator passes (its extension for data bars fails).
/// </summary>
static partial class WorkbookFinish
{
    public static byte[] Apply(MemoryStream saved, Caches caches, IReadOnlyList<BookChart> charts, DateOnly made)
    {
        using var from = new ZipArchive(saved, ZipArchiveMode.Read);
        var parts = from.Entries.ToDictionary(e => e.FullName, Read, StringComparer.Ordinal);
        var sheets = WorkbookParts.SheetNames(parts);
        foreach (var (part, sheet) in sheets)
        {
            parts[part] = SheetFinish.Apply(parts[part], caches.Of(sheet));
        }

        ChartParts.Add(parts, sheets[0].Part, charts);
        return Zip(Renamed(parts), made);
    }

    static string Read(ZipArchiveEntry entry)
    {
        using var reader = new StreamReader(entry.Open(), Encoding.UTF8);
        return reader.ReadToEnd();
    }

    // In the order of the parts' names, so that the new ids do not depend on the old.
    static SortedDictionary<string, string> Renamed(Dictionary<string, string> parts)
    {
        var ids = new Dictionary<string, string>(StringComparer.Ordinal);
        string Fixed(string text)
        {
            // A long sheet has neither, and a pattern looks at each of its letters.
            text = text.Contains(".psmdcp", StringComparison.Ordinal) ? RandomPart().Replace(text, "core.psmdcp") : text;
            text = text.Contains("definedName>", StringComparison.Ordinal) ? TitleRows().Replace(text, "!$$$1:$$$2") : text;
            return RandomId().Replace(text, m => ids.TryGetValue(m.Value, out var id) ? id : ids[m.Value] = $"Rel{ids.Count + 1}");
        }

        var renamed = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var (name, text) in parts.OrderBy(p => Fixed(p.Key), StringComparer.Ordinal))
        {
            renamed[Fixed(name)] = Fixed(text);
        }

        return renamed;
    }

    static byte[] Zip(SortedDictionary<string, string> parts, DateOnly made)
    {
        // A zip's clock starts in 1980.
        var time = new DateTimeOffset(Math.Max(made.Year, 1980), made.Month, made.Day, 0, 0, 0, TimeSpan.Zero);
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, text) in parts)
            {
                var entry = zip.CreateEntry(name, CompressionLevel.Optimal);
                entry.LastWriteTime = time;
                using var stream = entry.Open();
                stream.Write(new UTF8Encoding(encoderShouldEmitUTF8Identifier: false).GetBytes(text));
            }
        }

        return bytes.ToArray();
    }

    // Rows and columns repeat on each printed page only where they are absolute.
    [GeneratedRegex("!([A-Z]+|[0-9]+):([A-Z]+|[0-9]+)(?=[^<]*</(?:x:)?definedName>)")]
    private static partial Regex TitleRows();

    [GeneratedRegex("[0-9a-f]{32}\\.psmdcp")]
    private static partial Regex RandomPart();

    [GeneratedRegex("(?<=\")R[0-9a-f]{16}(?=\")")]
    private static partial Regex RandomId();
}
