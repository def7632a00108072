namespace Spoolbook;

/// <summary>The result of a run.</summary>
/// <param name="Found">The production with all its findings.</param>
/// <param name="End">How far it got.</param>
internal sealed record PipelineResult(CheckedProduction Found, PipelineEnd End)
{
    /// <summary>Its papers; null where none were written.</summary>
    public WrittenPapers? Written { get; init; }
}
