namespace Spoolbook.Fuzz.Running;

/// <summary>The folders and files of a target.</summary>
/// <param name="state">Where all targets keep their state.</param>
/// <param name="corpus">The corpus in the repository.</param>
internal sealed class Places(string state, string corpus, string target)
{
    /// <summary>The inputs that somebody wrote.</summary>
    public string Seeds { get; } = Path.Combine(corpus, target);

    /// <summary>The inputs that reached something new.</summary>
    public string Kept { get; } = Path.Combine(state, target, "kept");

    /// <summary>A folder for each fault.</summary>
    public string Finds { get; } = Path.Combine(state, target, "finds");

    /// <summary>The input that is running, for whoever looks after a crash.</summary>
    public string Current { get; } = Path.Combine(state, target, "current");

    /// <summary>How far the target came.</summary>
    public string Progress { get; } = Path.Combine(state, target, "progress.json");

    /// <summary>Makes the folders that are written to.</summary>
    public void Make()
    {
        Directory.CreateDirectory(Kept);
        Directory.CreateDirectory(Finds);
    }
}
