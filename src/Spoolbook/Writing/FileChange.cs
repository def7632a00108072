namespace Spoolbook.Writing;

/// <summary>What is to be at a name.</summary>
/// <param name="Name">The path from the folder, with forward slashes.</param>
/// <param name="Bytes">The file; null to take away the one that is there, or where the new one is staged.</param>
/// <param name="Before">What was there when the change was thought out (<see cref="FileState"/>).</param>
internal sealed record FileChange(string Name, byte[]? Bytes, string Before)
{
    /// <summary>The new file, where it is on the disk already (<see cref="WorkFolder.Stage"/>); null where it is in memory.</summary>
    public string? Staged { get; init; }

    public bool IsRemoval => Bytes is null && Staged is null;

    /// <summary>What is there afterwards. Of a staged file it is given.</summary>
    public string After
    {
        get => field ??= Bytes is null ? FileState.Nothing : FileState.Of(Bytes);
        init;
    }
}
