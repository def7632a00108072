namespace Spoolbook.Acceptance.Writing;

/// <summary>What happens to the work on files.</summary>
enum Fault
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>The process is killed: from then on it does nothing at all.</summary>
    Killed,

    /// <summary>One operation fails.</summary>
    Failed,

    /// <summary>Every operation fails from then on, as on a disk that was pulled out.</summary>
    Failing,
}
