namespace Spoolbook.Pdf.Images;

/// <summary>The pixels of one pass over the picture: all of them, or a regular share.</summary>
readonly record struct PngPass(int X, int Y, int StepX, int StepY, int Width, int Height);
