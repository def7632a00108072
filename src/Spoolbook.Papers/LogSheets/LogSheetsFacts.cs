using System.Collections.Immutable;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Logs;

namespace Spoolbook.Papers.LogSheets;

/// <summary>The facts of the blank log sheets: one for each roll to be shot, and one without a stock.</summary>
public sealed record LogSheetsFacts(PaperHead Head) : PaperFacts(Head)
{
    public required ImmutableArray<LogColumn> Columns { get; init; }
    public required ImmutableArray<LogSheet> Sheets { get; init; }

    /// <summary>The points of the ready list; empty in a shoot that does without.</summary>
    public required ImmutableArray<string> ReadyList { get; init; }
    public required string Gauge { get; init; }
    public required string LengthUnit { get; init; }
}
