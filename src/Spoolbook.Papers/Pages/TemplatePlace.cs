using System.Globalization;

namespace Spoolbook.Papers.Pages;

/// <summary>A place in a template; line and column count from one.</summary>
public readonly record struct TemplatePlace(string File, int Line, int Column)
{
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{File}({Line},{Column})");
}
