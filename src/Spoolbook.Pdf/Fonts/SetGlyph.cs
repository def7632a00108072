using System.Collections.Immutable;
using System.Text;

namespace Spoolbook.Pdf.Fonts;

/// <summary>A glyph where it stands in a line; all measures in font units.</summary>
/// <param name="Character">What it is when copied, unless it stands for a whole cluster.</param>
/// <param name="Before">How far the pen moves before it is drawn.</param>
public readonly record struct SetGlyph(ushort Glyph, Rune Character, int Before)
{
    /// <summary>A letter with all that belongs to it, drawn and copied as one; null for a single character.</summary>
    public string? Cluster { get; init; }

    /// <summary>The accents that are drawn with it.</summary>
    public ImmutableArray<PlacedAccent> Accents { get; init; }
}
