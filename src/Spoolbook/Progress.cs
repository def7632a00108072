namespace Spoolbook;

/// <summary>How far a command has come, for what is said when something breaks.</summary>
internal sealed class Progress
{
    /// <summary>What is being done: "reading", "printing".</summary>
    public string Doing { get; private set; } = "starting";

    /// <summary>The file that it is done on; null where none is known.</summary>
    public string? File { get; set; }

    /// <summary>What was found so far; null where nothing was read yet, or all of it is printed.</summary>
    public CheckedProduction? Found { get; set; }

    /// <summary>Prints findings in the form that was asked for.</summary>
    public Action<CheckedProduction>? Print { get; set; }

    /// <summary>Begins the next step, on no file yet.</summary>
    public void Begin(string doing) => (Doing, File) = (doing, null);
}
