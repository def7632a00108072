using System.Collections.Immutable;
using Spoolbook.Papers.Typesetting.Setup;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers;

/// <summary>A paper that was printed: its files, and what is wrong with it.</summary>
sealed record PrintedPaper(ImmutableArray<PaperFile> Files, ImmutableArray<Finding> Faults)
{
    /// <summary>Texts that are not shown as they were written; their place in the production is found for all papers at once.</summary>
    public ImmutableArray<(string Paper, PageWarning Warning)> Warnings { get; init; } = [];
}
