namespace Spoolbook.Printing;

/// <summary>How much a command says.</summary>
internal enum Loudness
{
    Usual,

    /// <summary>Errors and nothing else.</summary>
    Quiet,

    /// <summary>Also what was accepted and why, every place that could not be judged, and papers that are as they were.</summary>
    Verbose,
}
