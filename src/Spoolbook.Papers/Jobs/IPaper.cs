using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.Jobs;

/// <summary>A kind of paper: what is to be printed of it for a production.</summary>
internal interface IPaper
{
    /// <summary>
    /// A job for each sheet of its kind, in the order in which the index names them; none where there is nothing to print.
    /// </summary>
    IEnumerable<PaperJob> Jobs(PaperSource source);

    /// <summary>What was asked of the paper that it cannot do.</summary>
    IEnumerable<Finding> Faults(PaperSource source) => [];
}
