namespace Spoolbook.Tests;

/// <summary>A folder to run commands in.</summary>
sealed class Bench : Workbench
{
    /// <summary>Runs a command; returns its exit status and what it printed on both outputs.</summary>
    public (int Status, string Out, string Error) Run(params string[] args) => RunIn("", args);

    /// <summary>Runs a command from a folder of the bench.</summary>
    public (int Status, string Out, string Error) RunIn(string folder, params string[] args) =>
        RunIn(Path.Combine(Folder, folder), 100, colour: false, wraps: false, args);

    /// <summary>Runs a command on a screen so many columns wide.</summary>
    public (int Status, string Out, string Error) RunAt(int width, bool colour, params string[] args) =>
        RunIn(Folder, width, colour, wraps: true, args);

    static (int Status, string Out, string Error) RunIn(string folder, int width, bool colour, bool wraps, string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var around = new CommandEnvironment(output, error, folder, Made, colour, width) { Wraps = wraps };
        var status = SpoolbookApp.Run(args, around);
        return (status, output.ToString(), error.ToString());
    }
}
