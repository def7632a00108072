using System.Text;
using Spoolbook.Pdf.Files;
using Spoolbook.Pdf.Fonts;
using static Spoolbook.Pdf.Files.PdfSyntax;

namespace Spoolbook.Pdf.Documents;

/// <summary>The objects of one embedded font: its program, widths, the set of its glyphs and the way back to characters.</summary>
static class FontObjects
{
    public static void Write(ObjectFile file, int number, FontSubset subset, string tag)
    {
        var font = subset.Font;
        var glyphs = SubsetFile.Glyphs(subset);
        var program = SubsetFile.Write(font, glyphs);
        var name = $"/{tag}+{font.PostScriptName}";
        int Scale(int units) => (int)Math.Round(units * 1000.0 / font.UnitsPerEm);

        var programObject = file.AddStream($"/Length1 {Number(program.Length)}", program);
        var glyphSet = file.AddStream("", GlyphSet(glyphs.Count));
        var descriptor = file.Add(
            $"<</Type/FontDescriptor/FontName{name}/Flags 4/ItalicAngle 0/StemV 80"
                + $"/FontBBox{Rectangle(Scale(font.Box.Left), Scale(font.Box.Bottom), Scale(font.Box.Right), Scale(font.Box.Top))}"
                + $"/Ascent {Number(Scale(font.Ascent))}/Descent {Number(Scale(font.Descent))}/CapHeight {Number(Scale(font.CapHeight))}"
                + $"/FontFile2 {Reference(programObject)}/CIDSet {Reference(glyphSet)}>>"
        );
        var widths = string.Join(' ', glyphs.Select(slot => Number(Scale(font.Advance(slot.Glyph)))));
        var descendant = file.Add(
            $"<</Type/Font/Subtype/CIDFontType2/BaseFont{name}/CIDToGIDMap/Identity"
                + "/CIDSystemInfo<</Registry(Adobe)/Ordering(Identity)/Supplement 0>>"
                + $"/FontDescriptor {Reference(descriptor)}/DW 0/W[0[{widths}]]>>"
        );
        var unicode = file.AddStream("", Encoding.ASCII.GetBytes(UnicodeMap(subset)));
        file.Write(
            number,
            $"<</Type/Font/Subtype/Type0/BaseFont{name}/Encoding/Identity-H"
                + $"/DescendantFonts[{Reference(descendant)}]/ToUnicode {Reference(unicode)}>>"
        );
    }

    /// <summary>One bit for each glyph, the first glyph in the highest bit of the first byte.</summary>
    static byte[] GlyphSet(int count)
    {
        var bits = new byte[(count + 7) / 8];
        for (var i = 0; i < count; i++)
        {
            bits[i / 8] |= (byte)(0x80 >> i % 8);
        }

        return bits;
    }

    static string UnicodeMap(FontSubset subset)
    {
        var map = new StringBuilder();
        map.Append("/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n");
        map.Append("/CIDSystemInfo<</Registry(Adobe)/Ordering(UCS)/Supplement 0>>def\n/CMapName/Adobe-Identity-UCS def\n");
        map.Append("/CMapType 2 def\n1 begincodespacerange\n<0000><FFFF>\nendcodespacerange\n");
        // A block of a character map holds at most a hundred lines.
        foreach (var block in Enumerable.Range(1, subset.Slots.Count - 1).Chunk(100))
        {
            map.Append(Number(block.Length)).Append(" beginbfchar\n");
            foreach (var slot in block)
            {
                var text = subset.Slots[slot].Text;
                map.Append('<').Append(Convert.ToHexString([(byte)(slot >> 8), (byte)(slot & 255)])).Append("><");
                map.Append(Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text))).Append(">\n");
            }
            map.Append("endbfchar\n");
        }
        return map.Append("endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n").ToString();
    }
}
