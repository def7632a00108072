using System.Text;
using Spoolbook.Writing;

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
    /// <summary>What is wrong with the surroundings, so that no command runs; null where nothing is.</summary>
    public string? Refused { get; init; }

    /// <summary>Whether it is read on a terminal, where long lines break between words.</summary>
    public bool Wraps { get; init; }

    /// <summary>Whether a person looks at the error output, so that it can say how far a long command is.</summary>
    public bool ShowsProgress { get; init; }

    /// <summary>Where answers to questions come from, a line each.</summary>
    public TextReader In { get; init; } = TextReader.Null;

    /// <summary>Standard input as bytes; null where it is only text.</summary>
    public Func<Stream>? InBytes { get; init; }

    /// <summary>Standard input to its end, or the first bytes of it.</summary>
    /// <param name="most">How many bytes at most.</param>
    internal byte[] ReadBytes(int most)
    {
        if (InBytes is null)
        {
            var bytes = Encoding.UTF8.GetBytes(In.ReadToEnd());
            return bytes.Length > most ? bytes[..most] : bytes;
        }

        using var input = InBytes();
        var buffer = new byte[Math.Min(most, 1 << 16)];
        var all = new MemoryStream();
        while (all.Length < most && input.Read(buffer, 0, (int)Math.Min(buffer.Length, most - all.Length)) is > 0 and var read)
        {
            all.Write(buffer, 0, read);
        }

        return all.ToArray();
    }

    /// <summary>Whether a person answers, who can be asked again.</summary>
    public bool AsksAgain { get; init; }

    /// <summary>Whether a stack trace is wanted when something breaks.</summary>
    public bool Trace { get; init; }

    /// <summary>The date of making at this moment, for a command that makes again and again.</summary>
    internal Func<DateTimeOffset>? Clock { get; init; }

    /// <summary>The date of making for papers that are made now.</summary>
    internal DateTimeOffset MadeNow() => Clock?.Invoke() ?? Made;

    /// <summary>Ends a command that goes on until it is told to stop.</summary>
    public CancellationToken Stop { get; init; }

    /// <summary>How far the command has come.</summary>
    internal Progress Progress { get; init; } = new();

    /// <summary>What prints papers, given what usually does.</summary>
    internal Func<IPaperStages, IPaperStages> Papers { get; init; } = usual => usual;

    /// <summary>What does the work on files.</summary>
    internal IFileWork Disk { get; init; } = FileWork.OfThisMachine;

    /// <summary>The keys of a terminal; null where none is there to be typed on.</summary>
    public Func<ConsoleKeyInfo>? Key { get; init; }

    /// <summary>What the clock says.</summary>
    public Func<DateTime> Now { get; init; } = () => DateTime.Now;

    /// <summary>The surroundings of this process.</summary>
    public static CommandEnvironment OfThisProcess()
    {
        WindowsConsole.SetUp();
        var output = new StreamWriter(Console.OpenStandardOutput()) { AutoFlush = false, NewLine = "\n" };
        var error = new StreamWriter(Console.OpenStandardError()) { AutoFlush = true, NewLine = "\n" };
        var noColour = !string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"));
        var terminal = !Console.IsOutputRedirected && Environment.GetEnvironmentVariable("TERM") != "dumb";
        var folder = CurrentFolder();
        var made = MakingDate.Of(Environment.GetEnvironmentVariable("SOURCE_DATE_EPOCH"), DateTimeOffset.Now);
        return new CommandEnvironment(
            output,
            error,
            folder ?? Path.GetTempPath(),
            made.Date,
            terminal && !noColour,
            terminal ? TerminalWidth() : 100
        )
        {
            Refused = folder is null ? "the folder that it was started in is gone; start it in another." : made.Refused,
            Clock = () => MakingDate.Of(Environment.GetEnvironmentVariable("SOURCE_DATE_EPOCH"), DateTimeOffset.Now).Date,
            In = Console.In,
            InBytes = Console.OpenStandardInput,
            AsksAgain = !Console.IsInputRedirected,
            Wraps = terminal,
            ShowsProgress = !Console.IsErrorRedirected && Environment.GetEnvironmentVariable("TERM") != "dumb",
            Key = terminal && !Console.IsInputRedirected ? () => Console.ReadKey(intercept: true) : null,
            Trace = !string.IsNullOrEmpty(Environment.GetEnvironmentVariable(LastResort.Trace)),
        };
    }

    // https://reproducible-builds.org/specs/source-date-epoch/ : seconds since 1970, used in place of the clock.
    static string? CurrentFolder()
    {
        try
        {
            return Environment.CurrentDirectory;
        }
        catch (IOException)
        {
            return null;
        }
    }

    static int TerminalWidth()
    {
        try
        {
            return Math.Clamp(Console.WindowWidth, 40, 140);
        }
        catch (IOException)
        {
            return 100;
        }
    }
}
