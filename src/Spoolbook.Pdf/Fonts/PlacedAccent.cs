namespace Spoolbook.Pdf.Fonts;

/// <summary>An accent's glyph, and its offset from the letter's start.</summary>
public readonly record struct PlacedAccent(ushort Glyph, int Right, int Up);
