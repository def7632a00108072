using System.Globalization;

namespace Spoolbook.Papers.Pages;

/// <summary>What is wrong with a template, and where.</summary>
public sealed record TemplateFault(string File, int Line, int Column, string Reason)
{
    public TemplateFault(TemplatePlace place, string reason)
        : this(place.File, place.Line, place.Column, reason) { }

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{File}({Line},{Column}): {Reason}");
}
