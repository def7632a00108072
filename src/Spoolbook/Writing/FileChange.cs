namespace Spoolbook.Writing;

/// <summary>What is to be at a name.</summary>
/// <param name="Name">The path from the folder, with forward slashes.</param>
/// <param name="Bytes">The file; null to take away the one that is there.</param>
/// <param name="Before">What was there when the change was thought out (<see cref="FileState"/>).</param>
internal sealed record FileChange(string Name, byte[]? Bytes, string Before)
{
    /// <summary>What is there afterwards.</summary>
    public string After
    {
        get => field ??= Bytes is null ? FileState.Nothing : FileState.Of(Bytes);
        init;
    }
}
