using System.Collections.Immutable;
using System.Text;

namespace Spoolbook.Pdf.Fonts;

/// <summary>A glyph in its place in a line; all measures in font units.</summary>
/// <param name="Character">The character it copies as, unless it is a whole cluster.</param>
/// <param name="Before">How far the pen moves before it is drawn.</param>
public readonly record struct SetGlyph(ushort Glyph, Rune Character, int Before)
{
    /// <summary>A letter with all its marks, drawn and copied as one; null for a single character.</summary>
    public string? Cluster { get; init; }

    /// <summary>The accents drawn with it.</summary>
    public ImmutableArray<PlacedAccent> Accents { get; init; }
}
