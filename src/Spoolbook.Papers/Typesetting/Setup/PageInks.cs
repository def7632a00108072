namespace Spoolbook.Papers.Typesetting.Setup;

/// <summary>
/// Colours in place of ink and grey, as 0xRRGGBB, for the rules and headings that may have one; null for black. No text
/// is printed on a colour, so none loses contrast.
/// </summary>
public sealed record PageInks
{
    public static readonly PageInks Black = new();

    /// <summary>The rule under the running head of each page.</summary>
    public int? HeadRule { get; init; }

    /// <summary>The rule under the paper's title.</summary>
    public int? TitleRule { get; init; }

    /// <summary>The bar above a table's head.</summary>
    public int? TableHead { get; init; }

    /// <summary>The edge of a note; that of a warning stays black.</summary>
    public int? CallOut { get; init; }

    /// <summary>Second-level headings.</summary>
    public int? Heading { get; init; }
}
