namespace Spoolbook.Acceptance.Folders;

/// <summary>One run of the command in a folder, independent of this machine.</summary>
/// <param name="Said">What it printed for people or programs.</param>
/// <param name="Complained">What it printed as errors of its own.</param>
sealed record CommandRun(int Status, string Said, string Complained);

/// <summary>Runs the command as a user would, in this process.</summary>
static class InProcess
{
    static readonly DateTimeOffset _made = new(2026, 11, 30, 12, 0, 0, TimeSpan.Zero);

    /// <summary>Runs the command with that folder as its current one.</summary>
    public static CommandRun Run(string folder, params string[] args)
    {
        using var said = new StringWriter { NewLine = "\n" };
        using var complained = new StringWriter { NewLine = "\n" };
        var around = new CommandEnvironment(said, complained, folder, _made, Colour: false, Width: 120);
        var status = SpoolbookApp.Run(args, around);
        return new CommandRun(status, said.ToString(), complained.ToString());
    }
}
