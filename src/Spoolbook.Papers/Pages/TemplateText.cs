using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.Pages;

/// <summary>A template's text, and its file's name for messages.</summary>
public sealed record TemplateText(string File, string Text)
{
    /// <summary>Why the file cannot be used although it exists: outside the folder, too long. Null for a usable file.</summary>
    public Sentence? Refused { get; init; }
}
