namespace Spoolbook.Fuzz.Mutations;

/// <summary>Mutations of written values: numbers with units, with signs and blanks between.</summary>
internal static class FormKinds
{
    static readonly string[] _units =
    [
        "ft",
        "feet",
        "foot",
        "fr",
        "frames",
        "m",
        "metres",
        "s",
        "sec",
        "min",
        "h",
        "mm",
        "cm",
        "in",
        "fps",
        "%",
        "inf",
        "∞",
        "T",
        "f/",
        "°",
        "K",
        "'",
        "\"",
        "stops",
    ];

    static readonly string[] _between =
    [
        "+",
        "-",
        "/",
        ".",
        ",",
        ":",
        " ",
        "  ",
        "\u00a0",
        "\t",
        "T",
        "e",
        "x",
        "1/3",
        " 2/3",
        "½",
        "-10-",
        "–",
    ];

    public static IReadOnlyList<MutationKind> All { get; } =
    [
        MutationKind.OfText("a number", (t, c) => t.Insert(c.Below(t.Length + 1), c.Number())),
        MutationKind.OfText("a unit", (t, c) => t.Insert(c.Below(t.Length + 1), c.Of(_units))),
        MutationKind.OfText("a sign between", (t, c) => t.Insert(c.Below(t.Length + 1), c.Of(_between))),
        MutationKind.OfLines("a new value", (l, c) => Value(l, c, c.Number() + c.Of(_between) + c.Number() + c.Of(_units))),
        MutationKind.OfLines("a number for a value", (l, c) => Value(l, c, c.Number())),
        MutationKind.OfLines("a value of another key", (l, c) => Value(l, c, After(c.Of(l)))),
        MutationKind.OfLines("a hostile value", (l, c) => Value(l, c, c.Hostile())),
    ];

    static void Value(List<string> lines, Chance chance, string value)
    {
        var at = chance.Below(lines.Count);
        var key = lines[at].IndexOf(": ", StringComparison.Ordinal);
        lines[at] = key < 0 ? value : lines[at][..(key + 2)] + value;
    }

    static string After(string line) => line.IndexOf(": ", StringComparison.Ordinal) is var at and >= 0 ? line[(at + 2)..] : line;
}
