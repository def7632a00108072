namespace Spoolbook.Shoot.Records;

/// <summary>What a process makes of the film, by its name.</summary>
public static class ProcessKind
{
    /// <summary>
    /// Whether the camera film becomes the positive: in a negative's bath it is lost. E-6, and all that call themselves reversal.
    /// </summary>
    public static bool IsReversal(string process) =>
        process.Contains("reversal", StringComparison.OrdinalIgnoreCase) || process.Equals("e-6", StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether it is a process for colour stock: ECN-2, ECP-2, C-41 or E-6. Common practice.</summary>
    public static bool IsColour(string process) => process.ToUpperInvariant() is "ECN-2" or "ECP-2" or "C-41" or "E-6";
}
