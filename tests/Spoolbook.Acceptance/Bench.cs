namespace Spoolbook.Acceptance;

/// <summary>A folder to run the command in, deleted afterwards.</summary>
internal sealed class Bench : Workbench
{
    /// <summary>Runs the command; returns its exit status and what it printed on both outputs.</summary>
    public (int Status, string Out, string Error) Run(params string[] args) => Answer("", args);

    /// <summary>Runs the command with lines for what it asks.</summary>
    public (int Status, string Out, string Error) Answer(string lines, params string[] args)
    {
        using var input = new StringReader(lines);
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var around = new CommandEnvironment(output, error, Folder, Made, Colour: false, Width: 100) { In = input };
        var status = SpoolbookApp.Run(args, around);
        return (status, output.ToString(), error.ToString());
    }

    /// <summary>Removes rolls from the consignment of a copy of the sample.</summary>
    public static void LeaveOutOfTheBox(string production, params string[] rolls)
    {
        var file = Path.Combine(production, "production.yaml");
        File.WriteAllText(
            file,
            rolls.Aggregate(File.ReadAllText(file), (text, roll) => text.Replace($", {roll}", "", StringComparison.Ordinal))
        );
    }

    /// <summary>Every file of a folder by name, with its bytes.</summary>
    public static SortedDictionary<string, byte[]> Bytes(string folder) =>
        new(Directory.EnumerateFiles(folder).ToDictionary(f => Path.GetFileName(f), File.ReadAllBytes), StringComparer.Ordinal);
}
