using System.Text;

namespace Spoolbook.Fuzz.Mutations;

/// <summary>Mutations that know nothing of what the bytes mean.</summary>
internal static class ByteKinds
{
    public static IReadOnlyList<MutationKind> All { get; } =
    [
        new("flip a bit", (b, c) => Changed(b, c, at => (byte)(b[at] ^ (1 << c.Below(8))))),
        new("set a byte", (b, c) => Changed(b, c, _ => c.OneIn(2) ? c.Byte() : c.Of<byte>([0, 9, 10, 13, 32, 34, 39, 127, 128, 255]))),
        new("count a byte up or down", (b, c) => Changed(b, c, at => unchecked((byte)(b[at] + c.Below(9) - 4)))),
        new("insert bytes", (b, c) => Inserted(b, c.Below(b.Length + 1), [.. Enumerable.Range(0, c.Length(16)).Select(_ => c.Byte())])),
        new("cut bytes out", (b, c) => Cut(b, c)),
        new("cut the end off", (b, c) => b[..c.Below(b.Length + 1)]),
        new("repeat a stretch", (b, c) => Repeat(b, c)),
        new("splice with another", (b, c) => Splice(b, c.Another(), c)),
        new("take a stretch of another", (b, c) => Inserted(b, c.Below(b.Length + 1), Stretch(c.Another(), c))),
        new("odd line ends", (b, c) => LineEnds(b, c)),
        new("another encoding", (b, c) => Encoded(b, c)),
        new("a byte order mark", (b, c) => Inserted(
                b,
                c.OneIn(2) ? 0 : c.Below(b.Length + 1),
                c.Of<byte[]>([
                    [0xEF, 0xBB, 0xBF],
                    [0xFF, 0xFE],
                    [0xFE, 0xFF],
                ])
            )),
        new("broken UTF-8", (b, c) => Inserted(
                b,
                c.Below(b.Length + 1),
                c.Of<byte[]>([
                    [0xC0, 0x80],
                    [0xED, 0xA0, 0x80],
                    [0xF4, 0x90, 0x80, 0x80],
                    [0xE2, 0x82],
                    [0xFF],
                    [0x80],
                ])
            )),
        MutationKind.OfText("hostile text", (t, c) => t.Insert(c.Below(t.Length + 1), c.Hostile())),
        MutationKind.OfText("another word", (t, c) => Word(t, c, c.Word())),
        MutationKind.OfText("a hostile word", (t, c) => Word(t, c, c.Hostile())),
        MutationKind.OfText("another number", Number),
    ];

    public static byte[] Inserted(byte[] bytes, int at, byte[] more) => [.. bytes[..at], .. more, .. bytes[at..]];

    static byte[] Changed(byte[] bytes, Chance chance, Func<int, byte> change)
    {
        if (bytes.Length == 0)
        {
            return bytes;
        }

        var changed = bytes.ToArray();
        var at = chance.Below(bytes.Length);
        changed[at] = change(at);
        return changed;
    }

    static byte[] Cut(byte[] bytes, Chance chance)
    {
        var from = chance.Below(bytes.Length);
        return [.. bytes[..from], .. bytes[Math.Min(bytes.Length, from + chance.Length(bytes.Length))..]];
    }

    static byte[] Repeat(byte[] bytes, Chance chance)
    {
        var stretch = Stretch(bytes, chance);
        var times = chance.OneIn(20) ? chance.Below(Math.Max(2, 20_000 / Math.Max(1, stretch.Length))) : 1 + chance.Below(5);
        return Inserted(bytes, chance.Below(bytes.Length + 1), [.. Enumerable.Repeat(stretch, times).SelectMany(s => s)]);
    }

    static byte[] Stretch(byte[] bytes, Chance chance)
    {
        var from = chance.Below(bytes.Length);
        return bytes[from..Math.Min(bytes.Length, from + chance.Length(256))];
    }

    static byte[] Splice(byte[] bytes, byte[] other, Chance chance) =>
        [.. bytes[..chance.Below(bytes.Length + 1)], .. other[chance.Below(other.Length + 1)..]];

    static byte[] LineEnds(byte[] bytes, Chance chance)
    {
        var end = chance.Of<byte[]>([
            [13, 10],
            [13],
            [10, 13],
            [0xC2, 0x85],
            [0xE2, 0x80, 0xA8],
            [11],
            [12],
            [10, 10],
        ]);
        var all = chance.OneIn(2);
        return [.. bytes.SelectMany(b => b == 10 && (all || chance.OneIn(4)) ? end : [b])];
    }

    static byte[] Encoded(byte[] bytes, Chance chance)
    {
        var encoding = chance.Of<Encoding>([Encoding.Unicode, Encoding.BigEndianUnicode, Encoding.UTF32, Encoding.Latin1]);
        return encoding.GetBytes(Encoding.UTF8.GetString(bytes));
    }

    static string Word(string text, Chance chance, string word)
    {
        var (from, to) = Around(text, chance.Below(text.Length), char.IsLetterOrDigit);
        return text[..from] + word + text[to..];
    }

    static string Number(string text, Chance chance)
    {
        var start = chance.Below(text.Length);
        var digit = text.AsSpan(start).IndexOfAnyInRange('0', '9');
        if (digit < 0)
        {
            return text;
        }

        var (from, to) = Around(text, start + digit, c => char.IsAsciiDigit(c) || c == '.');
        return text[..from] + chance.Number() + text[to..];
    }

    /// <summary>The stretch of such characters around a place.</summary>
    static (int From, int To) Around(string text, int at, Func<char, bool> belongs)
    {
        var (from, to) = (at, at);
        while (from > 0 && belongs(text[from - 1]))
        {
            from--;
        }

        while (to < text.Length && belongs(text[to]))
        {
            to++;
        }

        return (from, to);
    }
}
