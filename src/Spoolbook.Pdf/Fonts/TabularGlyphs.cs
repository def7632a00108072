using static Spoolbook.Pdf.Fonts.BigEndian;

namespace Spoolbook.Pdf.Fonts;

/// <summary>The feature 'tnum' of table GSUB: glyphs of equal width in place of proportional digits.</summary>
static class TabularGlyphs
{
    const int SingleSubstitution = 1,
        Extension = 7;

    public static Dictionary<ushort, ushort> Read(byte[] gsub)
    {
        var replaced = new Dictionary<ushort, ushort>();
        foreach (var (type, at) in LayoutTable.Subtables(gsub, "tnum", Extension))
        {
            if (type != SingleSubstitution)
            {
                continue;
            }

            var covered = LayoutTable.Coverage(gsub, at + U16(gsub, at + 2));
            for (var i = 0; i < covered.Count; i++)
            {
                var glyph = U16(gsub, at) == 1 ? covered[i] + I16(gsub, at + 4) : U16(gsub, at + 6 + 2 * i);
                replaced.TryAdd(covered[i], (ushort)(glyph & 0xFFFF));
            }
        }
        return replaced;
    }
}
