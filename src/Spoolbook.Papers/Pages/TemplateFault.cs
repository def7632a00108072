using System.Globalization;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.Pages;

/// <summary>What is wrong with a template, and where.</summary>
public sealed record TemplateFault(string File, int Line, int Column, Sentence Description)
{
    /// <summary>What is wrong, in English.</summary>
    public string Reason => Description.ToString();

    public TemplateFault(TemplatePlace place, Sentence description)
        : this(place.File, place.Line, place.Column, description) { }

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{File}({Line},{Column}): {Reason}");
}
