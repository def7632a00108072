namespace Spoolbook.Fuzz.Mutations;

/// <summary>Mutations that know what stands between double braces.</summary>
internal static class TemplateKinds
{
    static readonly string[] _pieces =
    [
        "{{ for x in 1..9 }}{{ x }}{{ end }}",
        "{{ while true }}x{{ end }}",
        "{{ if true }}",
        "{{ else }}",
        "{{ end }}",
        "{{ include 'head.html' }}",
        "{{ include 'kit-list.html' }}",
        "{{ x = 1 }}",
        "{{ func f(x); ret f(x); end; f 1 }}",
        "{{ [1,2,3] | array.sort }}",
        "{{ 'x' | string.pad_left 100000 }}",
        "{{ 1 / 0 }}",
        "{{ 1..1000000 | array.size }}",
        "{{ null.x }}",
        "{{ head.words.title }}",
        "{{ for p in papers }}{{ p }}{{ end }}",
        "{{ this }}",
        "{{ object.keys this }}",
        "{{ 9999999999 * 9999999999 * 9999999999 }}",
        "{{ \"a\" * 100000 }}",
        "{{ regex.match 'aaaaaaaaaaaaaaaaaaaaaaaaaaaaa!' '^(a+)+$' }}",
        "{{ date.now }}",
        "{{ 'x' | string.replace 'x' 'xx' }}",
        "{{ capture a }}x{{ end }}{{ a }}",
        "{{ case 1 }}{{ when 1 }}x{{ end }}",
        "{{~ -}}",
        "{{ math.pow 10 1000 }}",
        "{{ -1 | math.abs }}",
        "{{ 2147483648 | math.format 'X' }}",
        "{{ [] | array.first }}",
        "{{ {a:1}.b.c }}",
        "{{ tablerow x in 1..3 }}{{ x }}{{ end }}",
        "{{ wrap 'x' }}{{ end }}",
        "{{ 1 << 100 }}",
        "{{ (1..5)[9] }}",
        "{{ readonly x }}",
        "{{ import x }}",
        "{{ with this }}{{ end }}",
    ];

    public static IReadOnlyList<MutationKind> All { get; } =
    [
        MutationKind.OfText("a piece of script", (t, c) => t.Insert(c.Below(t.Length + 1), c.Of(_pieces))),
        MutationKind.OfText("a word in script", InScript),
        MutationKind.OfText("braces", (t, c) =>
            t.Insert(c.Below(t.Length + 1), c.Of(["{{", "}}", "{{{", "}}}", "{%{", "}%}", "{{~", "-}}", "{{-", "{{#", "{{ # x }}"]))
        ),
        MutationKind.OfText("a pipe", (t, c) =>
            InScript(
                t,
                c,
                c.Of([
                    " | string.upcase",
                    " | string.size",
                    " | array.size",
                    " | math.round 99",
                    " + 1",
                    " * 'x'",
                    " ?? 1",
                    "[0]",
                    ".x",
                    " && x",
                    "(1)",
                    "| x",
                ])
            )
        ),
        MutationKind.OfText("deep script", (t, c) => InScript(t, c, Deep(c))),
    ];

    static string InScript(string text, Chance chance) => InScript(text, chance, " " + chance.Word() + " ");

    static string InScript(string text, Chance chance, string word)
    {
        var start = chance.Below(text.Length);
        var at = text.IndexOf("}}", start, StringComparison.Ordinal);
        at = at < 0 ? text.IndexOf("}}", StringComparison.Ordinal) : at;
        return at < 0 ? text + "{{" + word + "}}" : text.Insert(at, word);
    }

    static string Deep(Chance chance)
    {
        var depth = chance.Below(chance.OneIn(4) ? 5_000 : 60);
        var (open, close) = chance.Of([("(", ")"), ("[", "]"), ("-", ""), ("!", ""), ("{a:", "}"), ("1+(", ")"), ("a.", ""), ("a|", "")]);
        return string.Concat(Enumerable.Repeat(open, depth)) + "1" + string.Concat(Enumerable.Repeat(close, depth));
    }
}
