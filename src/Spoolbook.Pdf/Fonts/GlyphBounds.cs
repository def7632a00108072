namespace Spoolbook.Pdf.Fonts;

/// <summary>The rectangle around a glyph's outline, in font units from the pen on the baseline.</summary>
public readonly record struct GlyphBounds(int Left, int Bottom, int Right, int Top);
