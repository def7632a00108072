using System.Collections.Immutable;

namespace Spoolbook.Papers.Terms;

/// <summary>A row of a table of the term.</summary>
/// <param name="Cells">A cell for each column.</param>
/// <param name="IsFlagged">Whether somebody has to do something about it.</param>
/// <param name="IsTotal">Whether it sums up those above.</param>
public sealed record TermRow(ImmutableArray<TermCell> Cells, bool IsFlagged = false, bool IsTotal = false);
