using System.Globalization;

namespace Spoolbook;

/// <summary>
/// Everything that the command takes from the machine. A test can pass its own, and the same input always makes the
/// same bytes.
/// </summary>
/// <param name="Folder">The folder that relative paths start from.</param>
/// <param name="Made">The date of making on the papers.</param>
/// <param name="Colour">Whether to print in colour.</param>
/// <param name="Width">Columns to print in.</param>
public sealed record CommandEnvironment(TextWriter Out, TextWriter Error, string Folder, DateTimeOffset Made, bool Colour, int Width)
{
    /// <summary>The environment of this process.</summary>
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

    // https://reproducible-builds.org/specs/source-date-epoch/ : seconds since 1970, used in place of the clock.
    static DateTimeOffset DateOfMaking()
    {
        var epoch = Environment.GetEnvironmentVariable("SOURCE_DATE_EPOCH");
        return long.TryParse(epoch, NumberStyles.None, CultureInfo.InvariantCulture, out var seconds) && seconds < 253402300800
            ? DateTimeOffset.FromUnixTimeSeconds(seconds)
            : DayOf(DateTimeOffset.Now);
    }

    // Papers carry only the day of making: two runs on one day with the same findings make the same files.
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
