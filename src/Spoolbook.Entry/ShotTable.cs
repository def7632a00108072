using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Spoolbook.Entry.Tables;

namespace Spoolbook.Entry;

/// <summary>
/// A shot list in a text file. A table has heads (scene, shot, what, screen, light). A plain list has one shot per line, its slate first:
/// <c>1A The pans, wide, 12s</c>.
/// </summary>
public static partial class ShotTable
{
    const int Heads = 5;

    // The first letters of what a director or a spreadsheet calls them.
    static readonly (string[] Heads, int Column)[] _heads =
    [
        (["scene", "sc", "sc."], 0),
        (["shot", "letter", "setup"], 1),
        (["what", "description", "action", "picture", "content"], 2),
        (["screen", "length", "duration", "time", "seconds", "secs"], 3),
        (["light"], 4),
    ];

    /// <summary>The longest file that is read, in bytes.</summary>
    public const int MostBytes = 1_000_000;

    /// <summary>Reads a list, or refuses all of it.</summary>
    /// <param name="name">The file's name, for addresses.</param>
    public static ShotList Read(string name, byte[] bytes)
    {
        var refused = new Objections();
        var notes = new Objections();
        try
        {
            var text = TableText.Decode(name, bytes, notes);
            var rows = CsvTable.Read(name, text, SeparatorOf(text)).Rows;
            var columns = rows.IsEmpty ? null : ColumnsOf(rows[0]);
            var shots = (columns is null ? rows : rows.Skip(1)).Select(row => Shot(row, columns, refused)).OfType<ListedShot>();
            ImmutableArray<ListedShot> all = [.. shots];
            if (all.IsEmpty && refused.Count == 0)
            {
                refused.Add(name, "There is no shot in it.", "Write a shot a line, its slate first: 1A The pans, wide, 12s");
            }

            return new ShotList(all, refused.All, notes.All);
        }
        catch (TableFault fault)
        {
            return new ShotList([], [fault.Objection, .. refused.All], notes.All);
        }
    }

    // A description can hold commas, so a tab or a semicolon in the first line goes first.
    static char SeparatorOf(string text)
    {
        var first = text.TrimStart('\r', '\n').Split('\n', 2)[0];
        return first.Contains('\t', StringComparison.Ordinal) ? '\t'
            : first.Contains(';', StringComparison.Ordinal) ? ';'
            : ',';
    }

    static Dictionary<int, int>? ColumnsOf(Row row)
    {
        var columns = new Dictionary<int, int>();
        foreach (var cell in row.Cells)
        {
            var head = cell.Text.ToLowerInvariant();
            if (_heads.Where(h => h.Heads.Contains(head)).Select(h => (int?)h.Column).FirstOrDefault() is { } column)
            {
                columns.TryAdd(column, cell.Column);
            }
        }

        return columns.ContainsKey(0) || columns.Count > 1 ? columns : null;
    }

    static ListedShot? Shot(Row row, Dictionary<int, int>? columns, Objections refused)
    {
        var cells = columns is null
            ? Plain(row)
            :
            [
                .. Enumerable
                    .Range(0, Heads)
                    .Select(c => columns.TryGetValue(c, out var at) ? row.Cells.FirstOrDefault(x => x.Column == at)?.Text : null),
            ];
        var (scene, shot) = Slate(cells[0], cells[1]);
        if (scene is null)
        {
            refused.Add(row.Address, "The line does not begin with a scene and a shot.", "Write the slate first: 1A The pans, wide, 12s");
            return null;
        }

        return new ListedShot(scene, shot, cells[2], Seconds(cells[3]), Light(cells[4]));
    }

    // The slate, the words, and at the end whatever has a form of its own.
    static string?[] Plain(Row row)
    {
        var parts = row.Cells.Select(c => c.Text).ToList();
        string? letter = null;
        var first = FirstWords().Match(parts[0]);
        if (!first.Success)
        {
            return new string?[Heads];
        }

        parts[0] = first.Groups[2].Value;
        if (parts[0].Length == 0 && parts.Count > 1 && Letter().IsMatch(parts[1]))
        {
            letter = parts[1];
            parts.RemoveAt(1);
        }

        var light = parts.FindLastIndex(p => Light(p) is "daylight" or "tungsten" or "mixed");
        var lit = light < 0 ? null : parts[light];
        parts = [.. parts.Where((_, at) => at != light)];
        var screen = parts.FindLastIndex(p => Time().IsMatch(p));
        var time = screen < 0 ? null : parts[screen];
        var words = string.Join(", ", parts.Where((p, at) => at != screen && p.Length > 0));
        return [first.Groups[1].Value, letter, words.Length == 0 ? null : words, time, lit];
    }

    // Cuts a slate in one cell where its letters begin: 7B, 7 B, 12AB.
    static (string? Scene, string? Shot) Slate(string? scene, string? shot)
    {
        if (scene is null || shot is not null)
        {
            return (scene, shot?.ToUpperInvariant());
        }

        return Together().Match(scene) is { Success: true } both
            ? (both.Groups[1].Value, both.Groups[2].Success ? both.Groups[2].Value.ToUpperInvariant() : null)
            : (scene, null);
    }

    static string? Seconds(string? text) =>
        text is null ? null
        : Number().IsMatch(text) ? text.Replace(',', '.') + "s"
        : Time().Match(text) is { Success: true } time
            ? time.Groups[1].Value.Replace(',', '.') + (time.Groups[2].Value.StartsWith('m') ? "min" : "s")
        : text;

    static string? Light(string? text) =>
        text?.ToLowerInvariant() switch
        {
            "day" or "daylight" => "daylight",
            "tungsten" => "tungsten",
            "mixed" => "mixed",
            _ => text,
        };

    [GeneratedRegex("^([0-9]+(?:[A-Za-z]{1,2}| [A-Z])?)(?:$|[ .:)–-]+)(.*)$", RegexOptions.Singleline)]
    private static partial Regex FirstWords();

    [GeneratedRegex("^[A-Za-z]{1,2}$")]
    private static partial Regex Letter();

    [GeneratedRegex("^([0-9]+) ?([A-Za-z]{1,2})?$")]
    private static partial Regex Together();

    [GeneratedRegex("^[0-9]+(?:[.,][0-9]+)?$")]
    private static partial Regex Number();

    [GeneratedRegex("^([0-9]+(?:[.,][0-9]+)?) ?(s|sec|secs|seconds|min|m)$", RegexOptions.IgnoreCase)]
    private static partial Regex Time();
}
