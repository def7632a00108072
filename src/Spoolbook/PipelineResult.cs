namespace Spoolbook;

/// <summary>What came of a production.</summary>
/// <param name="Found">The production with all that was found in it.</param>
/// <param name="End">How far it came.</param>
internal sealed record PipelineResult(CheckedProduction Found, PipelineEnd End)
{
    /// <summary>Its papers; null where none were written.</summary>
    public WrittenPapers? Written { get; init; }
}
