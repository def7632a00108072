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
        var entries = from.Entries.ToDictionary(e => e.FullName, StringComparer.Ordinal);
        var parts = entries.Where(e => !IsSheet(e.Key)).ToDictionary(e => e.Key, e => Read(e.Value), StringComparer.Ordinal);
        var sheets = WorkbookParts.SheetNames(parts);

        // The charts are on the first sheet. The others are read one at a time: a long shoot's takes have some megabytes.
        parts[sheets[0].Part] = Finished(sheets[0].Part, sheets[0].Sheet);
        ChartParts.Add(parts, sheets[0].Part, charts);
        var later = sheets.Skip(1).ToDictionary(s => s.Part, s => s.Sheet, StringComparer.Ordinal);
        return Zip([.. parts.Keys, .. later.Keys], part => parts.GetValueOrDefault(part) ?? Finished(part, later[part]), made);

        string Finished(string part, string sheet) => SheetFinish.Apply(Read(entries[part]), caches.Of(sheet));
    }

    static bool IsSheet(string part) =>
        part.StartsWith("xl/worksheets/", StringComparison.Ordinal) && part.EndsWith(".xml", StringComparison.Ordinal);

    static string Read(ZipArchiveEntry entry)
    {
        using var reader = new StreamReader(entry.Open(), Encoding.UTF8);
        return reader.ReadToEnd();
    }

    // In the order of the parts' names, so that the new ids do not depend on the old.
    static byte[] Zip(IEnumerable<string> parts, Func<string, string> textOf, DateOnly made)
    {
        var ids = new Dictionary<string, string>(StringComparer.Ordinal);

        // A zip's clock starts in 1980.
        var time = new DateTimeOffset(Math.Max(made.Year, 1980), made.Month, made.Day, 0, 0, 0, TimeSpan.Zero);
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, part) in parts.Select(p => (Fixed(p), p)).OrderBy(p => p.Item1, StringComparer.Ordinal))
            {
                var entry = zip.CreateEntry(name, CompressionLevel.Optimal);
                entry.LastWriteTime = time;
                using var stream = entry.Open();
                // At once: how it packs depends on the pieces that it gets.
                stream.Write(new UTF8Encoding(encoderShouldEmitUTF8Identifier: false).GetBytes(Fixed(textOf(part))));
            }
        }

        return bytes.ToArray();

        string Fixed(string text)
        {
            // A long sheet has neither, and a pattern looks at each of its letters.
            text = text.Contains(".psmdcp", StringComparison.Ordinal) ? RandomPart().Replace(text, "core.psmdcp") : text;
            text = text.Contains("definedName>", StringComparison.Ordinal) ? TitleRows().Replace(text, "!$$$1:$$$2") : text;
            return RandomId().Replace(text, m => ids.TryGetValue(m.Value, out var id) ? id : ids[m.Value] = $"Rel{ids.Count + 1}");
        }
    }

    // Rows and columns repeat on each printed page only where they are absolute.
    [GeneratedRegex("!([A-Z]+|[0-9]+):([A-Z]+|[0-9]+)(?=[^<]*</(?:x:)?definedName>)")]
    private static partial Regex TitleRows();

    [GeneratedRegex("[0-9a-f]{32}\\.psmdcp")]
    private static partial Regex RandomPart();

    [GeneratedRegex("(?<=\")R[0-9a-f]{16}(?=\")")]
    private static partial Regex RandomId();
}
