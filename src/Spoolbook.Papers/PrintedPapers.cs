using System.Collections.Immutable;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers;

/// <summary>What came off the press: every file, or the faults that kept one from being printed.</summary>
public sealed record PrintedPapers(ImmutableArray<PaperFile> Files, ImmutableArray<Finding> Faults)
{
    /// <summary>Whether a template was at fault, so that nothing is to be written.</summary>
    public bool Failed => Faults.Any(f => f.Level == Level.Error);
}
