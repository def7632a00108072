using System.Collections.Immutable;

namespace Spoolbook.Papers.LogSheets;

/// <summary>A sheet to be written on by hand; what is empty is written there.</summary>
/// <param name="Rated">The exposure index of the stock and its colour balance; what it is rated at is decided on the day.</param>
/// <param name="Lines">An item for each line to be ruled.</param>
public sealed record LogSheet(
    string Stock,
    string LotAndUnit,
    string Emulsion,
    string Rated,
    string Process,
    string Loaded,
    string Body,
    ImmutableArray<string> Lines
);
