using System.Text;
using static Spoolbook.Pdf.Fonts.BigEndian;

namespace Spoolbook.Pdf.Fonts;

/// <summary>A TrueType font, read once and shared: its characters, widths, kerning and outlines.</summary>
public sealed class TrueTypeFont
{
    const int WhiteSquare = 0x25A1;

    readonly byte[] _file;
    readonly Dictionary<string, (int At, int Length)> _tables = [];
    readonly Dictionary<int, ushort> _glyphs;
    readonly Dictionary<ushort, ushort> _tabular;
    readonly KerningPairs _kerning;
    readonly ushort[] _advances;
    readonly int _longMetrics;
    readonly bool _longOffsets;

    /// <summary>Reads a font file. Throws for any other file: that is the programmer's mistake.</summary>
    public TrueTypeFont(string postScriptName, byte[] file)
    {
        PostScriptName = postScriptName;
        _file = file;
        int count = U16(file, 4);
        for (var i = 0; i < count; i++)
        {
            var record = 12 + 16 * i;
            var tag = Encoding.ASCII.GetString(file, record, 4);
            _tables[tag] = (Offset32(file, record + 8), Offset32(file, record + 12));
        }

        var head = Table("head");
        UnitsPerEm = U16(head, 18);
        Box = (I16(head, 36), I16(head, 38), I16(head, 40), I16(head, 42));
        _longOffsets = I16(head, 50) == 1;
        var hhea = Table("hhea");
        Ascent = I16(hhea, 4);
        Descent = I16(hhea, 6);
        _longMetrics = U16(hhea, 34);
        CapHeight = I16(Table("OS/2"), 88);
        GlyphCount = U16(Table("maxp"), 4);
        _glyphs = CharacterMap.Read(Table("cmap"));
        _tabular = HasTable("GSUB") ? TabularGlyphs.Read(Table("GSUB").ToArray()) : [];
        _kerning = HasTable("GPOS") ? KerningPairs.Read(Table("GPOS").ToArray()) : new KerningPairs();
        var metrics = Table("hmtx");
        _advances = new ushort[_longMetrics];
        for (var glyph = 0; glyph < _longMetrics; glyph++)
        {
            _advances[glyph] = U16(metrics, 4 * glyph);
        }

        MissingGlyph = _glyphs.GetValueOrDefault(WhiteSquare);
    }

    public string PostScriptName { get; }

    public int UnitsPerEm { get; }

    /// <summary>Font units above the baseline.</summary>
    public int Ascent { get; }

    /// <summary>Font units below the baseline, negative.</summary>
    public int Descent { get; }

    public int CapHeight { get; }

    public int GlyphCount { get; }

    public (int Left, int Bottom, int Right, int Top) Box { get; }

    /// <summary>The visible box for a character that the font lacks.</summary>
    public ushort MissingGlyph { get; }

    public bool Has(Rune character) => _glyphs.ContainsKey(character.Value);

    /// <summary>The glyph of a character; <see cref="MissingGlyph"/> where the font lacks it.</summary>
    public ushort Glyph(Rune character, bool tabular)
    {
        if (!_glyphs.TryGetValue(character.Value, out var glyph))
        {
            return MissingGlyph;
        }

        return tabular ? _tabular.GetValueOrDefault(glyph, glyph) : glyph;
    }

    /// <summary>How far a glyph moves the pen, in font units.</summary>
    public int Advance(ushort glyph) => _advances[Math.Min(glyph, _longMetrics - 1)];

    /// <summary>What kerning adds between two glyphs, in font units; negative brings them closer.</summary>
    public int Kerning(ushort left, ushort right) => _kerning.Between(left, right);

    /// <summary>The rectangle around a glyph; null for a blank.</summary>
    public GlyphBounds? Bounds(ushort glyph)
    {
        var outline = Outline(glyph);
        return outline.Length < 10 ? null : new GlyphBounds(I16(outline, 2), I16(outline, 4), I16(outline, 6), I16(outline, 8));
    }

    /// <summary>Whether a part of this composite glyph is itself composite. Some subsetting code follows only one level.</summary>
    public bool HasNestedParts(ushort glyph) => Parts(glyph).Any(part => Parts(part).Count > 0);

    internal bool HasTable(string tag) => _tables.ContainsKey(tag);

    internal ReadOnlySpan<byte> Table(string tag)
    {
        var (at, length) = _tables[tag];
        return _file.AsSpan(at, length);
    }

    internal short LeftBearing(ushort glyph)
    {
        var at = glyph < _longMetrics ? 4 * glyph + 2 : 4 * _longMetrics + 2 * (glyph - _longMetrics);
        return I16(Table("hmtx"), at);
    }

    internal ReadOnlySpan<byte> Outline(ushort glyph)
    {
        var loca = Table("loca");
        var start = _longOffsets ? Offset32(loca, 4 * glyph) : 2 * U16(loca, 2 * glyph);
        var end = _longOffsets ? Offset32(loca, 4 * glyph + 4) : 2 * U16(loca, 2 * glyph + 2);
        return Table("glyf")[start..end];
    }

    internal List<ushort> Parts(ushort glyph)
    {
        var outline = Outline(glyph);
        var parts = new List<ushort>();
        foreach (var at in CompositeGlyph.PartPositions(outline))
        {
            parts.Add(U16(outline, at));
        }

        return parts;
    }
}
