namespace Spoolbook;

/// <summary>
/// Puts off collecting garbage for as much memory as the papers of a short shoot take: the process ends before a collection pays, and
/// each one stops all threads. Past that amount the runtime collects as ever.
/// </summary>
internal static class GarbagePutOff
{
    const long Amount = 240L << 20;

    // On a small machine the memory is worth more than the time.
    const long LeastOfMachine = 3L << 30;

    /// <summary>Begins to. May be called once in a process.</summary>
    public static void Start()
    {
        if (GC.GetGCMemoryInfo().TotalAvailableMemoryBytes < LeastOfMachine)
        {
            return;
        }

        try
        {
            _ = GC.TryStartNoGCRegion(Amount);
        }
        catch (ArgumentOutOfRangeException)
        {
            // The runtime was given less memory than the machine has.
        }
    }
}
