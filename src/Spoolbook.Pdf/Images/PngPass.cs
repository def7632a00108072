namespace Spoolbook.Pdf.Images;

/// <summary>The pixels that one pass over the picture holds: all of them, or every so many.</summary>
readonly record struct PngPass(int X, int Y, int StepX, int StepY, int Width, int Height);
