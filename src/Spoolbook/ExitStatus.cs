namespace Spoolbook;

/// <summary>The command's exit status.</summary>
public static class ExitStatus
{
    /// <summary>No errors.</summary>
    public const int Well = 0;

    /// <summary>Errors were found in the production.</summary>
    public const int ErrorsFound = 1;

    /// <summary>Wrong use of the command.</summary>
    public const int WrongUse = 2;

    /// <summary>Something outside failed: a disk, a permission.</summary>
    public const int OutsideFailed = 3;

    /// <summary>Another process is writing there; nothing was changed.</summary>
    public const int Busy = 4;

    /// <summary>Stopped by Ctrl-C before all productions were done (128 and the signal's number, as shells say it).</summary>
    public const int Stopped = 130;

    /// <summary>Spoolbook itself broke: a mistake of ours, and not of the production's (EX_SOFTWARE of BSD's sysexits).</summary>
    public const int Broken = 70;
}
