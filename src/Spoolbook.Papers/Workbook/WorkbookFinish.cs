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
    const int Piece = 1 << 16;

    static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    public static byte[] Apply(MemoryStream saved, Caches caches, IReadOnlyList<BookChart> charts, DateOnly made)
    {
        using var from = new ZipArchive(saved, ZipArchiveMode.Read);
        var entries = from.Entries.ToDictionary(e => e.FullName, StringComparer.Ordinal);
        var parts = entries.Where(e => !IsSheet(e.Key)).ToDictionary(e => e.Key, e => Read(e.Value), StringComparer.Ordinal);
        foreach (var part in parts.Keys.Where(p => p.StartsWith("xl/tables/", StringComparison.Ordinal)))
        {
            parts[part] = caches.LongTables.Aggregate(parts[part], (text, table) => table.Lengthen(text));
        }

        var sheets = WorkbookParts.SheetNames(parts);

        // The charts are on the first sheet. The others are read one at a time: a long shoot's takes have some megabytes.
        using var first = new StringWriter();
        Finish(sheets[0], first, id => id);
        parts[sheets[0].Part] = first.ToString();
        ChartParts.Add(parts, sheets[0].Part, charts);
        var later = sheets.Skip(1).ToDictionary(s => s.Part, StringComparer.Ordinal);
        return Zip([.. parts.Keys, .. later.Keys], Write, made);

        void Write(string part, Stream to, Dictionary<string, string> ids)
        {
            if (parts.TryGetValue(part, out var text))
            {
                to.Write(Utf8.GetBytes(Fixed(text, ids)));
                return;
            }

            // How it packs depends on the pieces that it gets: all at once, or of one size where it is long.
            var whole = caches.LateOf(later[part].Sheet) is null;
            using Stream pieces = whole ? new MemoryStream() : new BufferedStream(to, Piece);
            using (var writer = new StreamWriter(pieces, Utf8, leaveOpen: true))
            {
                Finish(later[part], writer, value => RandomId().IsMatch(value) ? IdOf(value, ids) : value);
            }

            if (pieces is MemoryStream all)
            {
                all.WriteTo(to);
            }
        }

        void Finish((string Part, string Sheet) sheet, TextWriter to, Func<string, string> idOf)
        {
            using var from = new StreamReader(entries[sheet.Part].Open(), Encoding.UTF8);
            SheetFinish.Apply(from, to, caches.Of(sheet.Sheet), caches.LateOf(sheet.Sheet), idOf);
        }
    }

    static bool IsSheet(string part) =>
        part.StartsWith("xl/worksheets/", StringComparison.Ordinal) && part.EndsWith(".xml", StringComparison.Ordinal);

    static string Read(ZipArchiveEntry entry)
    {
        using var reader = new StreamReader(entry.Open(), Encoding.UTF8);
        return reader.ReadToEnd();
    }

    // In the order of the parts' names, so that the new ids do not depend on the old.
    static byte[] Zip(IEnumerable<string> parts, Action<string, Stream, Dictionary<string, string>> write, DateOnly made)
    {
        var ids = new Dictionary<string, string>(StringComparer.Ordinal);

        // A zip's clock starts in 1980.
        var time = new DateTimeOffset(Math.Max(made.Year, 1980), made.Month, made.Day, 0, 0, 0, TimeSpan.Zero);
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, part) in parts.Select(p => (Fixed(p, ids), p)).OrderBy(p => p.Item1, StringComparer.Ordinal))
            {
                var entry = zip.CreateEntry(name, CompressionLevel.Optimal);
                entry.LastWriteTime = time;
                using var stream = entry.Open();
                write(part, stream, ids);
            }
        }

        return bytes.ToArray();
    }

    static string Fixed(string text, Dictionary<string, string> ids)
    {
        // A long text has neither, and a pattern looks at each of its letters.
        text = text.Contains(".psmdcp", StringComparison.Ordinal) ? RandomPart().Replace(text, "core.psmdcp") : text;
        text = text.Contains("definedName>", StringComparison.Ordinal) ? TitleRows().Replace(text, "!$$$1:$$$2") : text;
        return RandomIds().Replace(text, m => IdOf(m.Value, ids));
    }

    static string IdOf(string random, Dictionary<string, string> ids) =>
        ids.TryGetValue(random, out var id) ? id : ids[random] = $"Rel{ids.Count + 1}";

    // Rows and columns repeat on each printed page only where they are absolute.
    [GeneratedRegex("!([A-Z]+|[0-9]+):([A-Z]+|[0-9]+)(?=[^<]*</(?:x:)?definedName>)")]
    private static partial Regex TitleRows();

    [GeneratedRegex("[0-9a-f]{32}\\.psmdcp")]
    private static partial Regex RandomPart();

    [GeneratedRegex("(?<=\")R[0-9a-f]{16}(?=\")")]
    private static partial Regex RandomIds();

    [GeneratedRegex("^R[0-9a-f]{16}$")]
    private static partial Regex RandomId();
}
