namespace Spoolbook.Fuzz.Running;

/// <summary>How a worker ended.</summary>
internal static class ExitCode
{
    /// <summary>Its time is over, or it was stopped.</summary>
    public const int Done = 0;

    /// <summary>It saved a find and wants a new process: a hang that does not end, memory that stays.</summary>
    public const int Afresh = 3;
}
