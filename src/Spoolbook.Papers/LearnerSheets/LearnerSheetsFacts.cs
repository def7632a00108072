using System.Collections.Immutable;
using Spoolbook.Papers.Facts;

namespace Spoolbook.Papers.LearnerSheets;

/// <summary>The facts of the learners' sheets: one for each who wants it.</summary>
public sealed record LearnerSheetsFacts(PaperHead Head) : PaperFacts(Head)
{
    public required ImmutableArray<LearnerSheet> Sheets { get; init; }

    /// <summary>The points of the ready list, which is ticked for each load and not here.</summary>
    public required string ReadyList { get; init; }

    /// <summary>The turrets of the bodies, a line each: which lens is in which hole.</summary>
    public required ImmutableArray<string> Turrets { get; init; }
}
