namespace Spoolbook.Papers.Typesetting.Setup;

/// <summary>
/// Colours in place of ink and grey, as 0xRRGGBB, where a rule or a heading may have one; null where the paper is to be black
/// only. Nothing is ever printed on a colour, so that a colour takes no text's contrast away.
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
