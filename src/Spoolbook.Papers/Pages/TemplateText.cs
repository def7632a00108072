using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.Pages;

/// <summary>A template's text, and the file that a message about it should name.</summary>
public sealed record TemplateText(string File, string Text)
{
    /// <summary>
    /// Why the file is not to be used though it is there: it lies elsewhere, it is too long. Null for one that may be read.
    /// </summary>
    public Sentence? Refused { get; init; }
}
