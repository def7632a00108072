using static Spoolbook.Pdf.Fonts.BigEndian;

namespace Spoolbook.Pdf.Fonts;

/// <summary>A glyph composed of others: where their numbers are in its outline.</summary>
static class CompositeGlyph
{
    const int WideArguments = 0x0001,
        OneScale = 0x0008,
        MoreParts = 0x0020,
        TwoScales = 0x0040,
        Matrix = 0x0080;

    /// <summary>The positions of the part numbers; empty for a simple glyph.</summary>
    public static List<int> PartPositions(ReadOnlySpan<byte> outline)
    {
        var positions = new List<int>();
        if (outline.Length < 10 || I16(outline, 0) >= 0)
        {
            return positions;
        }

        int at = 10,
            flags;
        do
        {
            flags = U16(outline, at);
            positions.Add(at + 2);
            at += 4 + ((flags & WideArguments) != 0 ? 4 : 2);
            if ((flags & OneScale) != 0)
            {
                at += 2;
            }
            else if ((flags & TwoScales) != 0)
            {
                at += 4;
            }
            else if ((flags & Matrix) != 0)
            {
                at += 8;
            }
        } while ((flags & MoreParts) != 0);
        return positions;
    }
}
