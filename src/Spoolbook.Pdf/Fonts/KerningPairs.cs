using static Spoolbook.Pdf.Fonts.BigEndian;

namespace Spoolbook.Pdf.Fonts;

/// <summary>The feature 'kern' of table GPOS: how much closer (negative) or wider two neighbours are set, in font units.</summary>
sealed class KerningPairs
{
    const int PairAdjustment = 2,
        Extension = 9;
    const int AdvanceOnly = 0x0004;

    // What was asked lately, each entry its own proof: the two glyphs above, the adjustment below. Threads may overwrite each other.
    const int KnownCount = 8192;

    readonly List<Func<ushort, ushort, int?>> _subtables = [];
    readonly long[] _known = new long[KnownCount];

    public static KerningPairs Read(byte[] gpos)
    {
        var pairs = new KerningPairs();
        foreach (var (type, at) in LayoutTable.Subtables(gpos, "kern", Extension))
        {
            // Reads only the plain form, which changes the first glyph's advance and nothing of the second.
            if (type != PairAdjustment || U16(gpos, at + 4) != AdvanceOnly || U16(gpos, at + 6) != 0)
            {
                continue;
            }

            pairs._subtables.Add(U16(gpos, at) == 1 ? SinglePairs(gpos, at) : ClassPairs(gpos, at));
        }
        return pairs;
    }

    public int Between(ushort left, ushort right)
    {
        // One more, as an entry that was never written is zero.
        var pair = ((long)left << 16 | right) + 1;
        ref var known = ref _known[(left * 61 ^ right) & (KnownCount - 1)];
        var entry = Volatile.Read(ref known);
        if (entry >> 16 != pair)
        {
            entry = pair << 16 | (long)unchecked((ushort)Find(left, right));
            Volatile.Write(ref known, entry);
        }

        return unchecked((short)entry);
    }

    short Find(ushort left, ushort right)
    {
        foreach (var subtable in _subtables)
        {
            if (subtable(left, right) is { } adjustment)
            {
                return (short)adjustment;
            }
        }
        return 0;
    }

    static Func<ushort, ushort, int?> SinglePairs(byte[] gpos, int at)
    {
        var found = new Dictionary<int, int>();
        var covered = LayoutTable.Coverage(gpos, at + U16(gpos, at + 2));
        for (var i = 0; i < covered.Count; i++)
        {
            var set = at + U16(gpos, at + 10 + 2 * i);
            int count = U16(gpos, set);
            for (var k = 0; k < count; k++)
            {
                found.TryAdd(covered[i] << 16 | U16(gpos, set + 2 + 4 * k), I16(gpos, set + 4 + 4 * k));
            }
        }
        return (left, right) => found.TryGetValue(left << 16 | right, out var adjustment) ? adjustment : null;
    }

    static Func<ushort, ushort, int?> ClassPairs(byte[] gpos, int at)
    {
        var covered = LayoutTable.Coverage(gpos, at + U16(gpos, at + 2)).ToHashSet();
        var lefts = LayoutTable.Classes(gpos, at + U16(gpos, at + 8));
        var rights = LayoutTable.Classes(gpos, at + U16(gpos, at + 10));
        int rightClasses = U16(gpos, at + 14);
        return (left, right) =>
        {
            if (!covered.Contains(left))
            {
                return null;
            }

            int row = lefts.GetValueOrDefault(left),
                column = rights.GetValueOrDefault(right);
            return I16(gpos, at + 16 + 2 * (row * rightClasses + column));
        };
    }
}
