using System.Collections.Immutable;

namespace Spoolbook.Pdf.Fonts;

/// <summary>A glyph of a subset, the text it copies as, and the accents composed with it.</summary>
sealed record FontSlot(ushort Glyph, string Text)
{
    public ImmutableArray<PlacedAccent> Accents { get; init; } = [];
}
