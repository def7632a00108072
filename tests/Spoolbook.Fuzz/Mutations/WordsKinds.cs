namespace Spoolbook.Fuzz.Mutations;

/// <summary>Mutations of a words file: keys, texts, and the names in braces that are filled in.</summary>
internal static class WordsKinds
{
    static readonly string[] _places =
    [
        "{made}",
        "{",
        "}",
        "{}",
        "{x}",
        "{{made}}",
        "{n}",
        "{count}",
        "[#]",
        "Rolls[Good]",
        "'",
        "\"",
        "!",
        "=",
        "  ",
    ];

    public static IReadOnlyList<MutationKind> All { get; } =
    [
        MutationKind.OfLines("a hostile text", (l, c) => Text(l, c, _ => c.Hostile())),
        MutationKind.OfLines("a text of another key", (l, c) => Text(l, c, _ => After(c.Of(l)))),
        MutationKind.OfLines("no text", (l, c) => Text(l, c, _ => "")),
        MutationKind.OfLines("a long text", (l, c) => Text(l, c, t => string.Concat(Enumerable.Repeat(t + " ", 1 + c.Below(400))))),
        MutationKind.OfLines("a place to fill in", (l, c) => Text(l, c, t => t.Insert(c.Below(t.Length + 1), c.Of(_places)))),
        MutationKind.OfLines("a key of another line", (l, c) => Text(l, c, t => c.Word())),
        MutationKind.OfLines("another key", (l, c) => Key(l, c, Before(c.Of(l)))),
        MutationKind.OfLines("a hostile key", (l, c) => Key(l, c, c.Hostile())),
        MutationKind.OfLines("a key of the papers", (l, c) => l.Add($"{Before(c.Of(Utf8.Text(c.Another()).Split('\n')))} = {c.Hostile()}")),
    ];

    static void Text(List<string> lines, Chance chance, Func<string, string> change)
    {
        var at = chance.Below(lines.Count);
        lines[at] = $"{Before(lines[at])} = {change(After(lines[at]))}";
    }

    static void Key(List<string> lines, Chance chance, string key)
    {
        var at = chance.Below(lines.Count);
        lines[at] = $"{key} = {After(lines[at])}";
    }

    static string Before(string line) => line.Split('=')[0].Trim();

    static string After(string line) => line.IndexOf('=', StringComparison.Ordinal) is var at and >= 0 ? line[(at + 1)..].Trim() : line;
}
