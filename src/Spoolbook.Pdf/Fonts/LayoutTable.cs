using System.Text;
using static Spoolbook.Pdf.Fonts.BigEndian;

namespace Spoolbook.Pdf.Fonts;

/// <summary>What GSUB and GPOS share: features by name, lookups by number, glyph coverage and classes.</summary>
static class LayoutTable
{
    /// <summary>The subtables of every lookup of a feature, with the lookup's type; follows extensions.</summary>
    public static IEnumerable<(int Type, int At)> Subtables(byte[] table, string feature, int extensionType)
    {
        foreach (var lookup in Lookups(table, feature))
        {
            int type = U16(table, lookup),
                count = U16(table, lookup + 4);
            for (var i = 0; i < count; i++)
            {
                var at = lookup + U16(table, lookup + 6 + 2 * i);
                if (type == extensionType)
                {
                    yield return (U16(table, at + 2), at + Offset32(table, at + 4));
                }
                else
                {
                    yield return (type, at);
                }
            }
        }
    }

    static IEnumerable<int> Lookups(byte[] table, string feature)
    {
        int features = U16(table, 6),
            lookups = U16(table, 8);
        var numbers = new SortedSet<int>();
        int count = U16(table, features);
        for (var i = 0; i < count; i++)
        {
            var record = features + 2 + 6 * i;
            if (Encoding.ASCII.GetString(table, record, 4) != feature)
            {
                continue;
            }

            var at = features + U16(table, record + 4);
            int used = U16(table, at + 2);
            for (var k = 0; k < used; k++)
            {
                numbers.Add(U16(table, at + 4 + 2 * k));
            }
        }
        foreach (var number in numbers)
        {
            yield return lookups + U16(table, lookups + 2 + 2 * number);
        }
    }

    /// <summary>The glyphs of a coverage table, in the order of their coverage index.</summary>
    public static List<ushort> Coverage(ReadOnlySpan<byte> table, int at)
    {
        var glyphs = new List<ushort>();
        int count = U16(table, at + 2);
        for (var i = 0; i < count; i++)
        {
            if (U16(table, at) == 1)
            {
                glyphs.Add(U16(table, at + 4 + 2 * i));
                continue;
            }
            var range = at + 4 + 6 * i;
            for (int g = U16(table, range); g <= U16(table, range + 2); g++)
            {
                glyphs.Add((ushort)g);
            }
        }
        return glyphs;
    }

    /// <summary>The class of each glyph in a class table; glyphs missing from it are of class 0.</summary>
    public static Dictionary<ushort, int> Classes(ReadOnlySpan<byte> table, int at)
    {
        var classes = new Dictionary<ushort, int>();
        if (U16(table, at) == 1)
        {
            int first = U16(table, at + 2),
                count = U16(table, at + 4);
            for (var i = 0; i < count; i++)
            {
                classes[(ushort)(first + i)] = U16(table, at + 6 + 2 * i);
            }

            return classes;
        }
        int ranges = U16(table, at + 2);
        for (var i = 0; i < ranges; i++)
        {
            var range = at + 4 + 6 * i;
            for (int g = U16(table, range); g <= U16(table, range + 2); g++)
            {
                classes[(ushort)g] = U16(table, range + 4);
            }
        }
        return classes;
    }
}
