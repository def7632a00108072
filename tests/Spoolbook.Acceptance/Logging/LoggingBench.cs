namespace Spoolbook.Acceptance.Logging;

/// <summary>A production that is logged into, by a person or by a script.</summary>
internal sealed class LoggingBench : Workbench
{
    /// <summary>What the clock says.</summary>
    public DateTime Now { get; set; } = new(2026, 10, 4, 15, 0, 0);

    public string Production => PathOf("production");

    /// <summary>Runs the command in the production's folder.</summary>
    public (int Status, string Out, string Error) Run(params string[] args) => Piped("", args);

    /// <summary>Runs it with lines from a pipe.</summary>
    public (int Status, string Out, string Error) Piped(string input, params string[] args) => Piped(input, 100, args);

    public (int Status, string Out, string Error) Piped(string input, int width, params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        using var lines = new StringReader(input);
        var around = new CommandEnvironment(output, error, Production, Made, Colour: false, width) { In = lines, Now = () => Now };
        return (SpoolbookApp.Run(args, around), output.ToString(), error.ToString());
    }

    /// <summary>Begins the production.</summary>
    public (int Status, string Out, string Error) New(params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var around = new CommandEnvironment(output, error, Folder, Made, Colour: false, Width: 100);
        return (SpoolbookApp.Run(["new", "production", .. args], around), output.ToString(), error.ToString());
    }

    public string Read(string file) => File.ReadAllText(Path.Combine(Production, file));
}
