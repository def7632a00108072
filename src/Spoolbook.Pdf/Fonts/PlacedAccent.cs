namespace Spoolbook.Pdf.Fonts;

/// <summary>An accent's glyph, and how far it is moved from where the letter's pen began.</summary>
public readonly record struct PlacedAccent(ushort Glyph, int Right, int Up);
