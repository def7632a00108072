using System.Collections.Immutable;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Writing;

namespace Spoolbook;

/// <summary>Papers in memory.</summary>
/// <param name="Findings">What printing found.</param>
/// <param name="WriteTo">Writes them into their folder.</param>
internal sealed record PrintingStage(ImmutableArray<Finding> Findings, Func<WorkFolder, WrittenPapers> WriteTo)
{
    /// <summary>Whether the papers on the disk were made from the same, so that none was printed.</summary>
    public bool IsAsBefore { get; init; }

    /// <summary>Whether a paper could not be printed, so that none is written.</summary>
    public bool Failed => Findings.Any(f => f.Level == Level.Error);
}
