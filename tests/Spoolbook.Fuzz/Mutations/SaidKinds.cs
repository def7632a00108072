using Spoolbook.Entry.Lines;

namespace Spoolbook.Fuzz.Mutations;

/// <summary>Mutations of lines as they are said on set: words, their order, what stands between them.</summary>
internal static class SaidKinds
{
    static readonly string[] _words =
    [
        .. LineGrammar.Verbs,
        "last",
        "next",
        "1A/3",
        "1B/next",
        "#K3-1",
        "R01:",
        "R02",
        "N250-A/2",
        "to",
        "frames",
        "from",
        "f8",
        "T2",
        "16fps",
        "25mm",
        "85",
        "9ft",
        "5ft 6in",
        "inf",
        "half",
        "1/2",
        "G",
        "H",
        "NG",
        "T",
        "no",
        "-",
        ":",
        "sync",
        "wound",
        "closed",
        "capped",
        "zeroed",
        "short end of",
        "left",
        "13:52",
        "2026-10-04",
        "lens",
        "filter",
        "shutter",
        "focus",
        "reading 5.6",
        "fade-out 24",
        "\"5.6 1/3\"",
        "ready all except gate",
        "soft at the end",
    ];

    public static IReadOnlyList<MutationKind> All { get; } =
    [
        MutationKind.OfLines("a word more", (l, c) => Words(l, c, w => w.Insert(c.Below(w.Count + 1), c.Of(_words)))),
        MutationKind.OfLines("a word for a word", (l, c) => Words(l, c, w => w[c.Below(w.Count)] = c.Of(_words))),
        MutationKind.OfLines("a word less", (l, c) => Words(l, c, w => w.RemoveAt(c.Below(w.Count)))),
        MutationKind.OfLines("a number for a word", (l, c) => Words(l, c, w => w[c.Below(w.Count)] = c.Number())),
        MutationKind.OfLines("a hostile word", (l, c) => Words(l, c, w => w[c.Below(w.Count)] = c.Hostile())),
        MutationKind.OfLines("two words in the other order", (l, c) => Words(l, c, w => Swap(w, c.Below(w.Count), c.Below(w.Count)))),
        MutationKind.OfLines("a word of another line", (l, c) =>
            Words(l, c, w => w.Insert(c.Below(w.Count + 1), c.Of(c.Of(l).Split(' '))))
        ),
        MutationKind.OfLines("a colon", (l, c) => Words(l, c, w => w[c.Below(w.Count)] += ":")),
        MutationKind.OfLines("a word in quotation marks", (l, c) => Words(l, c, w => Quote(w, c.Below(w.Count)))),
    ];

    static void Words(List<string> lines, Chance chance, Action<List<string>> change)
    {
        var at = chance.Below(lines.Count);
        List<string> words = [.. lines[at].Split(' ')];
        change(words);
        lines[at] = string.Join(' ', words);
    }

    static void Swap(List<string> words, int one, int other) => (words[one], words[other]) = (words[other], words[one]);

    static void Quote(List<string> words, int at) => words[at] = $"\"{words[at]}\"";
}
