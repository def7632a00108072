namespace Spoolbook.Fuzz.Mutations;

/// <summary>Mutations that know tables in plain text: separators, quotes, cells, columns.</summary>
internal static class CsvKinds
{
    static readonly string[] _separators = [",", ";", "\t", "|", ":", ",,", "\u00a0", ", "];

    public static IReadOnlyList<MutationKind> All { get; } =
    [
        MutationKind.OfText("another separator", (t, c) => t.Replace(Separator(t), c.Of(_separators), StringComparison.Ordinal)),
        MutationKind.OfText("a separator more", (t, c) => t.Insert(c.Below(t.Length + 1), Separator(t))),
        MutationKind.OfText("a quote more", (t, c) => t.Insert(c.Below(t.Length + 1), "\"")),
        MutationKind.OfLines("a cell in quotes", (l, c) => Cell(l, c, v => $"\"{v.Replace("\"", "\"\"", StringComparison.Ordinal)}\"")),
        MutationKind.OfLines("a cell over two lines", (l, c) => Cell(l, c, v => $"\"{v}\n{v}\"")),
        MutationKind.OfLines("a hostile cell", (l, c) => Cell(l, c, _ => c.Hostile())),
        MutationKind.OfLines("a number for a cell", (l, c) => Cell(l, c, _ => c.Number())),
        MutationKind.OfLines("a word for a cell", (l, c) => Cell(l, c, _ => c.Word())),
        MutationKind.OfLines("no cell", (l, c) => Cell(l, c, _ => "")),
        MutationKind.OfLines("a formula", (l, c) => Cell(l, c, v => "=" + v)),
        MutationKind.OfLines("swap two columns", SwapColumns),
        MutationKind.OfLines("a long row", (l, c) =>
            l.Insert(c.Below(l.Count + 1), string.Concat(Enumerable.Repeat("x" + Separator(l[0]), c.Below(300))))
        ),
    ];

    static string Separator(string text) => _separators.Take(4).MaxBy(s => text.Split(s).Length)!;

    static void Cell(List<string> lines, Chance chance, Func<string, string> change)
    {
        var at = chance.Below(lines.Count);
        var separator = Separator(lines[0]);
        var cells = lines[at].Split(separator);
        var cell = chance.Below(cells.Length);
        cells[cell] = change(cells[cell]);
        lines[at] = string.Join(separator, cells);
    }

    static void SwapColumns(List<string> lines, Chance chance)
    {
        var separator = Separator(lines[0]);
        var (one, other) = (chance.Below(20), chance.Below(20));
        for (var i = 0; i < lines.Count; i++)
        {
            var cells = lines[i].Split(separator);
            if (one < cells.Length && other < cells.Length)
            {
                (cells[one], cells[other]) = (cells[other], cells[one]);
                lines[i] = string.Join(separator, cells);
            }
        }
    }
}
