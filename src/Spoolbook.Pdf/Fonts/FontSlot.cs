using System.Collections.Immutable;

namespace Spoolbook.Pdf.Fonts;

/// <summary>A glyph of a subset, what it is when copied, and the accents that are put together with it.</summary>
sealed record FontSlot(ushort Glyph, string Text)
{
    public ImmutableArray<PlacedAccent> Accents { get; init; } = [];
}
