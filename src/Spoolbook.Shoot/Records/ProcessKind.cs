namespace Spoolbook.Shoot.Records;

/// <summary>What a process makes of the film, by its name.</summary>
public static class ProcessKind
{
    /// <summary>
    /// Whether the camera film becomes the positive: in a negative's bath it is lost. E-6, and all that call themselves reversal.
    /// </summary>
    public static bool IsReversal(string process) =>
        process.Contains("reversal", StringComparison.OrdinalIgnoreCase) || process.Equals("e-6", StringComparison.OrdinalIgnoreCase);
}
