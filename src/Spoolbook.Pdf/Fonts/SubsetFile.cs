using System.Text;
using static Spoolbook.Pdf.Fonts.BigEndian;

namespace Spoolbook.Pdf.Fonts;

/// <summary>Writes a subset as a TrueType file of its own, for embedding in a PDF.</summary>
static class SubsetFile
{
    const uint WholeFileChecksum = 0xB1B0AFBA;

    public static byte[] Write(TrueTypeFont font, IReadOnlyList<FontSlot> glyphs)
    {
        var tables = new SortedDictionary<string, byte[]>(StringComparer.Ordinal);
        foreach (var tag in new[] { "cvt ", "fpgm", "prep" })
        {
            if (font.HasTable(tag))
            {
                tables[tag] = font.Table(tag).ToArray();
            }
        }

        var head = font.Table("head").ToArray();
        Put32(head, 8, 0);
        Put16(head, 50, 1);
        var hhea = font.Table("hhea").ToArray();
        Put16(hhea, 34, glyphs.Count);
        var maxp = font.Table("maxp").ToArray();
        Put16(maxp, 4, glyphs.Count);
        if (glyphs.Any(slot => !slot.Accents.IsEmpty))
        {
            AccentedGlyph.MakeRoom(maxp);
        }

        tables["head"] = head;
        tables["hhea"] = hhea;
        tables["maxp"] = maxp;
        tables["hmtx"] = Metrics(font, glyphs);
        (tables["glyf"], tables["loca"]) = Outlines(font, glyphs);
        return Assemble(tables);
    }

    /// <summary>The subset's slots, then the parts of its composites to any depth.</summary>
    public static IReadOnlyList<FontSlot> Glyphs(FontSubset subset)
    {
        var glyphs = subset.Slots.ToList();
        var known = glyphs.Where(slot => slot.Accents.IsEmpty).Select(slot => slot.Glyph).ToHashSet();
        for (var i = 0; i < glyphs.Count; i++)
        {
            foreach (var part in AccentedGlyph.Parts(subset.Font, glyphs[i]))
            {
                if (known.Add(part))
                {
                    glyphs.Add(new FontSlot(part, ""));
                }
            }
        }
        return glyphs;
    }

    static byte[] Metrics(TrueTypeFont font, IReadOnlyList<FontSlot> glyphs)
    {
        var hmtx = new byte[4 * glyphs.Count];
        for (var i = 0; i < glyphs.Count; i++)
        {
            var bearing = glyphs[i].Accents.IsEmpty ? font.LeftBearing(glyphs[i].Glyph) : AccentedGlyph.Bounds(font, glyphs[i]).Left;
            Put16(hmtx, 4 * i, font.Advance(glyphs[i].Glyph));
            Put16(hmtx, 4 * i + 2, bearing & 0xFFFF);
        }
        return hmtx;
    }

    static (byte[] Glyf, byte[] Loca) Outlines(TrueTypeFont font, IReadOnlyList<FontSlot> glyphs)
    {
        var numbers = new Dictionary<ushort, int>();
        for (var i = 0; i < glyphs.Count; i++)
        {
            if (glyphs[i].Accents.IsEmpty)
            {
                numbers.TryAdd(glyphs[i].Glyph, i);
            }
        }

        using var glyf = new MemoryStream();
        var loca = new byte[4 * (glyphs.Count + 1)];
        for (var i = 0; i < glyphs.Count; i++)
        {
            var outline = glyphs[i].Accents.IsEmpty ? font.Outline(glyphs[i].Glyph).ToArray() : AccentedGlyph.Outline(font, glyphs[i]);
            foreach (var at in CompositeGlyph.PartPositions(outline))
            {
                Put16(outline, at, numbers[U16(outline, at)]);
            }
            glyf.Write(outline);
            while (glyf.Length % 4 != 0)
            {
                glyf.WriteByte(0);
            }

            Put32(loca, 4 * (i + 1), (uint)glyf.Length);
        }
        return (glyf.ToArray(), loca);
    }

    static byte[] Assemble(SortedDictionary<string, byte[]> tables)
    {
        var headerLength = 12 + 16 * tables.Count;
        var length = headerLength + tables.Values.Sum(Padded);
        var file = new byte[length];
        int power = 1,
            log = 0;
        while (power * 2 <= tables.Count)
        {
            power *= 2;
            log++;
        }
        Put32(file, 0, 0x00010000);
        Put16(file, 4, tables.Count);
        Put16(file, 6, 16 * power);
        Put16(file, 8, log);
        Put16(file, 10, 16 * (tables.Count - power));

        int record = 12,
            at = headerLength,
            headAt = 0;
        foreach (var (tag, bytes) in tables)
        {
            bytes.CopyTo(file, at);
            Encoding.ASCII.GetBytes(tag, file.AsSpan(record));
            Put32(file, record + 4, Checksum(file.AsSpan(at, Padded(bytes))));
            Put32(file, record + 8, (uint)at);
            Put32(file, record + 12, (uint)bytes.Length);
            if (tag == "head")
            {
                headAt = at;
            }

            record += 16;
            at += Padded(bytes);
        }
        Put32(file, headAt + 8, unchecked(WholeFileChecksum - Checksum(file)));
        return file;
    }

    static int Padded(byte[] table) => (table.Length + 3) / 4 * 4;

    static uint Checksum(ReadOnlySpan<byte> data)
    {
        uint sum = 0;
        for (var i = 0; i < data.Length; i += 4)
        {
            sum = unchecked(sum + U32(data, i));
        }

        return sum;
    }
}
