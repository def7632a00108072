using System.Collections.Immutable;
using Spoolbook.Papers.Pages;

namespace Spoolbook.Papers.Facts;

/// <summary>The head of a paper.</summary>
/// <param name="Invented">Says that the production is an invented scenario; empty for a real one.</param>
/// <param name="Made">The day of making.</param>
/// <param name="Language">As in BCP 47.</param>
/// <param name="DraftErrors">The errors in the production when a draft is printed; empty otherwise.</param>
public sealed record PaperHead(
    IReadOnlyDictionary<string, string> W,
    string Production,
    string Code,
    string Invented,
    string Made,
    string Language,
    ImmutableArray<string> DraftErrors
)
{
    /// <summary>Director and cinematographer, as far as they are written.</summary>
    public ImmutableArray<string> Credits { get; init; } = [];

    /// <summary>The school's mark; null for none.</summary>
    public Markup? School { get; init; }

    /// <summary>Whether the page is a draft.</summary>
    public bool Draft => DraftErrors.Length > 0;
}
