using System.Collections.Immutable;

namespace Spoolbook.Papers.LogSheets;

/// <summary>A page of a log sheet, which says by itself whose it is.</summary>
/// <param name="Of">Which page of how many; empty where there is one, so that a hand numbers what it adds.</param>
/// <param name="IsFirst">Whether it has the whole head.</param>
/// <param name="IsLast">Whether it has the sums and the signature.</param>
/// <param name="Lines">The number of each ruled line.</param>
public sealed record LogSheetPage(string Of, bool IsFirst, bool IsLast, ImmutableArray<string> Lines);
