using System.Collections.Immutable;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook;

/// <summary>Papers in memory.</summary>
/// <param name="Findings">What printing found.</param>
/// <param name="Write">Writes them to the disk.</param>
internal sealed record PrintingStage(ImmutableArray<Finding> Findings, Func<WrittenPapers> Write)
{
    /// <summary>Whether a paper could not be printed, so that none is written.</summary>
    public bool Failed => Findings.Any(f => f.Level == Level.Error);
}
