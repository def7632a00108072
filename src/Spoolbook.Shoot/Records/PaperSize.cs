namespace Spoolbook.Shoot.Records;

/// <summary>The paper that the production prints on: <c>letter</c> or <c>a4</c>.</summary>
public enum PaperSize
{
    /// <summary>8½ × 11 inches.</summary>
    Letter,

    /// <summary>210 × 297 mm.</summary>
    A4,
}
