namespace Spoolbook;

/// <summary>What the command tells the shell.</summary>
public static class ExitStatus
{
    /// <summary>All well.</summary>
    public const int Well = 0;

    /// <summary>Errors were found in the production.</summary>
    public const int ErrorsFound = 1;

    /// <summary>The command was used wrongly.</summary>
    public const int WrongUse = 2;

    /// <summary>Something outside failed: a disk, a permission.</summary>
    public const int OutsideFailed = 3;

    /// <summary>Another process is writing there; nothing was changed.</summary>
    public const int Busy = 4;
}
