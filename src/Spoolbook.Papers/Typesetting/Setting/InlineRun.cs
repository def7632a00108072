using Spoolbook.Pdf.Structure;

namespace Spoolbook.Papers.Typesetting.Setting;

/// <summary>Text of one style and one structure element. An empty text with Break set ends the line.</summary>
sealed record InlineRun(string Text, TextStyle Style, StructureElement Owner)
{
    public bool Break { get; init; }

    public string? Address { get; init; }

    public bool SameLook(InlineRun other) => ReferenceEquals(Owner, other.Owner) && Address == other.Address && Style == other.Style;
}
