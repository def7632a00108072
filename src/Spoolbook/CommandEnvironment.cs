using System.Globalization;
using Spoolbook.Writing;

namespace Spoolbook;

/// <summary>
/// Everything that the command takes from the machine, in one place, so that a test can give its own and the
/// same input always makes the same bytes.
/// </summary>
/// <param name="Folder">The folder that relative paths start from.</param>
/// <param name="Made">The date of making that papers carry.</param>
/// <param name="Colour">Whether what is printed may carry colour.</param>
/// <param name="Width">Columns to print in.</param>
public sealed record CommandEnvironment(TextWriter Out, TextWriter Error, string Folder, DateTimeOffset Made, bool Colour, int Width)
{
    /// <summary>What does the work on files.</summary>
    internal IFileWork Disk { get; init; } = FileWork.OfThisMachine;

    /// <summary>The surroundings of this process.</summary>
    public static CommandEnvironment OfThisProcess()
    {
        var output = new StreamWriter(Console.OpenStandardOutput()) { AutoFlush = false, NewLine = "\n" };
        var error = new StreamWriter(Console.OpenStandardError()) { AutoFlush = true, NewLine = "\n" };
        var noColour = !string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"));
        var terminal = !Console.IsOutputRedirected && Environment.GetEnvironmentVariable("TERM") != "dumb";
        return new CommandEnvironment(
            output,
            error,
            Environment.CurrentDirectory,
            DateOfMaking(),
            terminal && !noColour,
            terminal ? TerminalWidth() : 100
        );
    }

    // https://reproducible-builds.org/specs/source-date-epoch/ : seconds since 1970 that stand for the clock.
    static DateTimeOffset DateOfMaking()
    {
        var epoch = Environment.GetEnvironmentVariable("SOURCE_DATE_EPOCH");
        return long.TryParse(epoch, NumberStyles.None, CultureInfo.InvariantCulture, out var seconds) && seconds < 253402300800
            ? DateTimeOffset.FromUnixTimeSeconds(seconds)
            : DayOf(DateTimeOffset.Now);
    }

    // Papers say the day on which they were made: two runs on one day that found the same are the same files.
    static DateTimeOffset DayOf(DateTimeOffset moment) => new(moment.Date, moment.Offset);

    static int TerminalWidth()
    {
        try
        {
            return Math.Clamp(Console.WindowWidth, 60, 140);
        }
        catch (IOException)
        {
            return 100;
        }
    }
}
