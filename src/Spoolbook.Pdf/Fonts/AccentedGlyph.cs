using static Spoolbook.Pdf.Fonts.BigEndian;

namespace Spoolbook.Pdf.Fonts;

/// <summary>
/// A letter and its accents as one glyph, as the font itself has é: readers see one letter with one width and copy it
/// whole.
/// </summary>
static class AccentedGlyph
{
    const int WideArguments = 0x0001,
        Offsets = 0x0002,
        OneScale = 0x0008,
        MoreParts = 0x0020,
        TwoScales = 0x0040,
        Matrix = 0x0080;
    const int Scaling = OneScale | TwoScales | Matrix;

    /// <summary>The glyphs of the font that a slot's outline refers to.</summary>
    public static IEnumerable<ushort> Parts(TrueTypeFont font, FontSlot slot) =>
        slot.Accents.IsEmpty ? font.Parts(slot.Glyph) : Components(font, slot).Select(component => component.Glyph);

    public static GlyphBounds Bounds(TrueTypeFont font, FontSlot slot)
    {
        var all = slot
            .Accents.Select(accent =>
                font.Bounds(accent.Glyph) is { } box
                    ? new GlyphBounds(box.Left + accent.Right, box.Bottom + accent.Up, box.Right + accent.Right, box.Top + accent.Up)
                    : (GlyphBounds?)null
            )
            .Append(font.Bounds(slot.Glyph))
            .OfType<GlyphBounds>()
            .ToList();
        return new GlyphBounds(all.Min(b => b.Left), all.Min(b => b.Bottom), all.Max(b => b.Right), all.Max(b => b.Top));
    }

    /// <summary>A composite outline that refers to the font's own numbers.</summary>
    public static byte[] Outline(TrueTypeFont font, FontSlot slot)
    {
        var box = Bounds(font, slot);
        var outline = new List<byte>();
        foreach (var value in new[] { -1, box.Left, box.Bottom, box.Right, box.Top })
        {
            Add(value);
        }

        var components = Components(font, slot).ToList();
        for (var i = 0; i < components.Count; i++)
        {
            var (glyph, right, up, scaling, scale) = components[i];
            Add(WideArguments | Offsets | scaling | (i < components.Count - 1 ? MoreParts : 0));
            Add(glyph);
            Add(right);
            Add(up);
            outline.AddRange(scale);
        }
        return [.. outline];

        void Add(int value) => outline.AddRange([(byte)(value >> 8 & 255), (byte)(value & 255)]);
    }

    /// <summary>Parts, and where they go. A letter composed of parts passes those on: no composite goes into another.</summary>
    static IEnumerable<(ushort Glyph, int Right, int Up, int Scaling, byte[] Scale)> Components(TrueTypeFont font, FontSlot slot) =>
        slot.Accents.Prepend(new PlacedAccent(slot.Glyph, 0, 0)).SelectMany(part => Components(font, part));

    static List<(ushort Glyph, int Right, int Up, int Scaling, byte[] Scale)> Components(TrueTypeFont font, PlacedAccent part)
    {
        var outline = font.Outline(part.Glyph);
        var found = new List<(ushort, int, int, int, byte[])>();
        if (outline.Length == 0)
        {
            return found;
        }

        foreach (var at in CompositeGlyph.PartPositions(outline))
        {
            int flags = U16(outline, at - 2);
            // Parts joined point to point keep their places only together.
            if ((flags & Offsets) == 0)
            {
                return [(part.Glyph, part.Right, part.Up, 0, [])];
            }

            var wide = (flags & WideArguments) != 0;
            int right = wide ? I16(outline, at + 2) : unchecked((sbyte)outline[at + 2]),
                up = wide ? I16(outline, at + 4) : unchecked((sbyte)outline[at + 3]);
            var scale =
                (flags & OneScale) != 0 ? 2
                : (flags & TwoScales) != 0 ? 4
                : (flags & Matrix) != 0 ? 8
                : 0;
            found.Add(
                (U16(outline, at), right + part.Right, up + part.Up, flags & Scaling, outline.Slice(at + (wide ? 6 : 4), scale).ToArray())
            );
        }
        return found.Count > 0 ? found : [(part.Glyph, part.Right, part.Up, 0, [])];
    }

    /// <summary>Readers allocate memory by the largest composite in the table 'maxp'.</summary>
    public static void MakeRoom(byte[] maxp)
    {
        const int Points = 10,
            Contours = 12,
            Elements = 28,
            Depth = 30,
            Times = 9;
        Put16(maxp, Points, Math.Min(0xFFFF, Times * Math.Max(U16(maxp, 6), U16(maxp, Points))));
        Put16(maxp, Contours, Math.Min(0xFFFF, Times * Math.Max(U16(maxp, 8), U16(maxp, Contours))));
        Put16(maxp, Elements, Math.Min(0xFFFF, Times * Math.Max((ushort)1, U16(maxp, Elements))));
        Put16(maxp, Depth, Math.Max((ushort)2, U16(maxp, Depth)));
    }
}
