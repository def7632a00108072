using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.Jobs;

/// <summary>A kind of paper, and its jobs for a production.</summary>
internal interface IPaper
{
    /// <summary>A job for each paper of this kind, in the order of the index; none where there is nothing to print.</summary>
    IEnumerable<PaperJob> Jobs(PaperSource source);

    /// <summary>What the production asks of the paper that it cannot do.</summary>
    IEnumerable<Finding> Faults(PaperSource source) => [];
}
