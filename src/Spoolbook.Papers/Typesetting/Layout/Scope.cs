using Spoolbook.Papers.Typesetting.Setting;
using Spoolbook.Pdf.Structure;

namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>
/// Where a block is set: its column, its text, its place in the structure. The maximum height is for the tallest thing
/// in the column: a page's height, less what surrounds it.
/// </summary>
sealed record Scope(double X, double Width, double MaximumHeight, TextStyle Text, StructureElement Parent)
{
    public Alignment Alignment { get; init; }

    public Scope Inset(double left, double right) => this with { X = X + left, Width = Math.Max(12, Width - left - right) };

    public Scope Within(StructureElement parent) => this with { Parent = parent };
}
