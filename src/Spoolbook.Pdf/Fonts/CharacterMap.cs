using static Spoolbook.Pdf.Fonts.BigEndian;

namespace Spoolbook.Pdf.Fonts;

/// <summary>The font's table 'cmap': from a character to its glyph.</summary>
static class CharacterMap
{
    public static Dictionary<int, ushort> Read(ReadOnlySpan<byte> cmap)
    {
        var glyphs = new Dictionary<int, ushort>();
        int tables = U16(cmap, 2);
        for (var i = 0; i < tables; i++)
        {
            var subtable = cmap[Offset32(cmap, 4 + 8 * i + 4)..];
            switch (U16(subtable, 0))
            {
                case 4:
                    ReadSegments(subtable, glyphs);
                    break;
                case 12:
                    ReadGroups(subtable, glyphs);
                    break;
            }
        }
        return glyphs;
    }

    /// <summary>Format 4: segments of the basic plane.</summary>
    static void ReadSegments(ReadOnlySpan<byte> table, Dictionary<int, ushort> glyphs)
    {
        var segments = U16(table, 6) / 2;
        int ends = 14,
            starts = 16 + 2 * segments,
            deltas = starts + 2 * segments,
            offsets = deltas + 2 * segments;
        for (var s = 0; s < segments; s++)
        {
            int start = U16(table, starts + 2 * s),
                end = U16(table, ends + 2 * s);
            int delta = U16(table, deltas + 2 * s),
                offset = U16(table, offsets + 2 * s);
            for (var c = start; c <= end && c != 0xFFFF; c++)
            {
                var glyph = c;
                if (offset != 0)
                {
                    glyph = U16(table, offsets + 2 * s + offset + 2 * (c - start));
                    if (glyph == 0)
                    {
                        continue;
                    }
                }
                glyph = (glyph + delta) & 0xFFFF;
                if (glyph != 0)
                {
                    glyphs.TryAdd(c, (ushort)glyph);
                }
            }
        }
    }

    /// <summary>Format 12: groups over all planes.</summary>
    static void ReadGroups(ReadOnlySpan<byte> table, Dictionary<int, ushort> glyphs)
    {
        var groups = Offset32(table, 12);
        for (var g = 0; g < groups; g++)
        {
            var at = 16 + 12 * g;
            int start = Offset32(table, at),
                end = Offset32(table, at + 4),
                first = Offset32(table, at + 8);
            for (var c = start; c <= end; c++)
            {
                glyphs.TryAdd(c, (ushort)(first + c - start));
            }
        }
    }
}
