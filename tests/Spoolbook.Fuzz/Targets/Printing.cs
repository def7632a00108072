using System.Text.Json;
using Spoolbook.Printing;

namespace Spoolbook.Fuzz.Targets;

/// <summary>Findings as the command prints them, in each of its three forms.</summary>
internal static class Printing
{
    const int Narrow = 60,
        Wide = 100;

    /// <summary>Prints in all forms, and reads back what programs would read.</summary>
    /// <exception cref="BrokenPromiseException">What was printed cannot be read, or something gets through to the terminal.</exception>
    public static void All(CheckedProduction found, string production = "shoot")
    {
        var text = Print(found, production, FindingFormat.Text, false, Narrow);
        if (text.Any(c => char.IsControl(c) && c != '\n'))
        {
            throw new BrokenPromiseException("The terminal gets a control character");
        }

        Print(found, production, FindingFormat.Text, true, Wide);
        Read(Print(found, production, FindingFormat.Json, false, Wide), "JSON");
        Read(Print(found, production, FindingFormat.Sarif, false, Wide), "SARIF");
    }

    static string Print(CheckedProduction found, string production, FindingFormat format, bool colour, int width)
    {
        using var output = new StringWriter { NewLine = "\n" };
        new FindingPrinter(production, format, Around(output, colour, width)).Print(found);
        return output.ToString();
    }

    /// <summary>The surroundings of a command that prints into a text.</summary>
    public static CommandEnvironment Around(TextWriter output, bool colour, int width) =>
        new(output, output, Path.GetTempPath(), Made, colour, width);

    /// <summary>The day on which all papers here are made.</summary>
    public static DateTimeOffset Made { get; } = new(2026, 10, 6, 0, 0, 0, TimeSpan.Zero);

    /// <summary>Reads what programs would read.</summary>
    /// <exception cref="BrokenPromiseException">It is no JSON.</exception>
    public static void Read(string printed, string form)
    {
        try
        {
            using var read = JsonDocument.Parse(printed);
        }
        catch (JsonException wrong)
        {
            throw new BrokenPromiseException($"{form} that no program can read", wrong);
        }
    }
}
