namespace Spoolbook.Fuzz.Mutations;

/// <summary>Mutations of whole lines.</summary>
internal static class LineKinds
{
    public static IReadOnlyList<MutationKind> All { get; } =
    [
        MutationKind.OfLines("swap two lines", (l, c) => Swap(l, c.Below(l.Count), c.Below(l.Count))),
        MutationKind.OfLines("repeat a line", (l, c) => l.Insert(c.Below(l.Count), c.Of(l))),
        MutationKind.OfLines("repeat a line often", (l, c) =>
            l.InsertRange(c.Below(l.Count), Enumerable.Repeat(c.Of(l), c.Below(c.OneIn(10) ? 1000 : 20)))
        ),
        MutationKind.OfLines("delete a line", (l, c) => l.RemoveAt(c.Below(l.Count))),
        MutationKind.OfLines("delete lines", (l, c) =>
        {
            var from = c.Below(l.Count);
            l.RemoveRange(from, Math.Min(l.Count - from, c.Length(20)));
        }),
        MutationKind.OfLines("join two lines", (l, c) =>
        {
            var at = c.Below(l.Count - 1);
            if (l.Count > 1)
            {
                (l[at], _) = (l[at] + l[at + 1], true);
                l.RemoveAt(at + 1);
            }
        }),
        MutationKind.OfLines("break a line", (l, c) =>
        {
            var at = c.Below(l.Count);
            var column = c.Below(l[at].Length + 1);
            l.Insert(at + 1, l[at][column..]);
            l[at] = l[at][..column];
        }),
        MutationKind.OfLines("a line of another", (l, c) => l.Insert(c.Below(l.Count + 1), c.Of(Utf8.Text(c.Another()).Split('\n')))),
    ];

    static void Swap(List<string> lines, int one, int other) => (lines[one], lines[other]) = (lines[other], lines[one]);
}
