using System.Text.RegularExpressions;

namespace Spoolbook.Fuzz.Mutations;

/// <summary>Mutations that know YAML: keys, values, quotes, indentation, anchors, flow forms, deep trees.</summary>
internal static partial class YamlKinds
{
    const int Deep = 3_000;

    public static IReadOnlyList<MutationKind> All { get; } =
    [
        MutationKind.OfLines("indent a line", (l, c) => Change(l, c, line => new string(c.OneIn(8) ? '\t' : ' ', c.Below(5)) + line)),
        MutationKind.OfLines("outdent a line", (l, c) =>
            Change(l, c, line => line[Math.Min(line.Length - line.TrimStart().Length, c.Below(5))..])
        ),
        MutationKind.OfLines("indent a stretch", IndentStretch),
        MutationKind.OfText("another key", (t, c) => Replace(Key(), t, c, _ => c.Word())),
        MutationKind.OfText("a hostile key", (t, c) => Replace(Key(), t, c, _ => c.Hostile())),
        MutationKind.OfText("another value", (t, c) => Replace(Value(), t, c, _ => c.Word())),
        MutationKind.OfText("a value of another key", (t, c) => Replace(Value(), t, c, _ => AnyOf(Value(), t, c))),
        MutationKind.OfText("a hostile value", (t, c) => Replace(Value(), t, c, _ => c.Hostile())),
        MutationKind.OfText("a hostile value in quotes", (t, c) => Replace(Value(), t, c, _ => "\"" + Escaped(c.Hostile(), c) + "\"")),
        MutationKind.OfText("a number for a value", (t, c) => Replace(Value(), t, c, _ => c.Number())),
        MutationKind.OfText("no value", (t, c) => Replace(Value(), t, c, _ => "")),
        MutationKind.OfText("a value in quotes", (t, c) =>
            Replace(Value(), t, c, v => c.Of(["'", "\""]) is var q ? q + v + (c.OneIn(5) ? "" : q) : v)
        ),
        MutationKind.OfText("a list for a value", (t, c) =>
            Replace(Value(), t, c, v => $"[{v}{string.Concat(Enumerable.Repeat(", " + v, c.Below(c.OneIn(9) ? 500 : 4)))}]")
        ),
        MutationKind.OfText("a map for a value", (t, c) => Replace(Value(), t, c, v => $"{{{c.Word()}: {v}}}")),
        MutationKind.OfText("an anchor", (t, c) => Replace(Value(), t, c, v => "&a " + v)),
        MutationKind.OfText("an alias", (t, c) => Replace(Value(), t, c, _ => "*a")),
        MutationKind.OfText("a merge key", (t, c) => Replace(Key(), t, c, _ => "<<")),
        MutationKind.OfText("a tag", (t, c) =>
            Replace(Value(), t, c, v => c.Of(["!!str ", "!!int ", "!!binary ", "!!null ", "! ", "!a ", "!!map ", "!<tag:x> "]) + v)
        ),
        MutationKind.OfText("a block of text", (t, c) =>
            Replace(Value(), t, c, v => c.Of(["|", ">", "|-", ">+", "|9", ">0", "|1-"]) + "\n" + new string(' ', c.Below(12)) + v + "\n")
        ),
        MutationKind.OfText("a remark", (t, c) => t.Insert(c.Below(t.Length + 1), c.Of([" #", "#", " # ", "\n#"]))),
        MutationKind.OfText("a line of its own document", (t, c) =>
            t.Insert(c.Below(t.Length + 1), c.Of(["\n---\n", "\n...\n", "\n%YAML 1.2\n---\n", "\n%TAG ! x\n", "\n? ", "\n- "]))
        ),
        MutationKind.OfText("a deep tree", (t, c) => Replace(Value(), t, c, v => Tree(v, c))),
        MutationKind.OfText("a bomb of aliases", (t, c) => t + Bomb(c)),
    ];

    static string Tree(string value, Chance chance)
    {
        var depth = chance.OneIn(5) ? chance.Below(Deep) : chance.Below(60);
        var (open, close) = chance.Of([("[", "]"), ("{a: ", "}"), ("[{a: ", "}]"), ("- ", ""), ("? ", "")]);
        return string.Concat(Enumerable.Repeat(open, depth))
            + value
            + (chance.OneIn(4) ? "" : string.Concat(Enumerable.Repeat(close, depth)));
    }

    static string Bomb(Chance chance) =>
        string.Concat(
            Enumerable
                .Range(0, 2 + chance.Below(10))
                .Select(i => i == 0 ? "\nx0: &x0 [a, b]" : $"\nx{i}: &x{i} [{string.Join(", ", Enumerable.Repeat($"*x{i - 1}", 9))}]")
        );

    static void IndentStretch(List<string> lines, Chance chance)
    {
        var from = chance.Below(lines.Count);
        var blanks = new string(' ', 1 + chance.Below(4));
        for (var i = from; i < Math.Min(lines.Count, from + chance.Length(30)); i++)
        {
            lines[i] = blanks + lines[i];
        }
    }

    static void Change(List<string> lines, Chance chance, Func<string, string> change)
    {
        var at = chance.Below(lines.Count);
        lines[at] = change(lines[at]);
    }

    static string Escaped(string text, Chance chance) =>
        string.Concat(
            text.Select(c =>
                c is '"' or '\\' ? "\\" + c
                : c < ' ' || c > '~' && chance.OneIn(2) ? $"\\u{(int)c:X4}"
                : c.ToString()
            )
        );

    static string AnyOf(Regex what, string text, Chance chance) =>
        what.Matches(text) is { Count: > 0 } found ? found[chance.Below(found.Count)].Value : "";

    static string Replace(Regex what, string text, Chance chance, Func<string, string> change)
    {
        var found = what.Matches(text);
        if (found.Count == 0)
        {
            return text;
        }

        var match = found[chance.Below(found.Count)];
        return text[..match.Index] + change(match.Value) + text[(match.Index + match.Length)..];
    }

    [GeneratedRegex(@"[\w-]+(?=:( |\n|$))", RegexOptions.CultureInvariant)]
    private static partial Regex Key();

    [GeneratedRegex(@"(?<=[\w-]: )(""[^""\n]*""|'[^'\n]*'|[^,{}\[\]\n]+|\{[^{}\n]*\}|\[[^\[\]\n]*\])", RegexOptions.CultureInvariant)]
    private static partial Regex Value();
}
