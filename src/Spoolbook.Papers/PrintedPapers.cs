using System.Collections.Immutable;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers;

/// <summary>The result of printing: every file, or the faults that kept one from being printed.</summary>
public sealed record PrintedPapers(ImmutableArray<PaperFile> Files, ImmutableArray<Finding> Faults)
{
    /// <summary>Whether a template had a fault, so that nothing is written.</summary>
    public bool Failed => Faults.Any(f => f.Level == Level.Error);
}
