using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Papers.LogSheets;

/// <summary>A sheet to fill in by hand; what is empty is left blank.</summary>
/// <param name="Rated">The stock's exposure index and colour balance; the rating is decided on the day.</param>
/// <param name="Pages">Its pages, at least one.</param>
public sealed record LogSheet(
    string Stock,
    string LotAndUnit,
    string Emulsion,
    string Rated,
    string Process,
    string Loaded,
    string Body,
    ImmutableArray<LogSheetPage> Pages
)
{
    /// <summary>The film that goes into the camera; null where nobody knows it yet.</summary>
    internal Footage? Film { get; init; }

    /// <summary>How often its film was X-rayed, as on a can's label; empty for never.</summary>
    public string XRayed { get; init; } = "";
}
