using System.CommandLine;
using System.CommandLine.Help;
using Spoolbook.Commands;
using Spoolbook.Printing;
using Spoolbook.Writing;

namespace Spoolbook;

/// <summary>Runs a command line with a program's commands.</summary>
internal static class CommandLine
{
    public static int Run(string[] args, CommandEnvironment around, IReadOnlyList<Command> commands)
    {
        try
        {
            var status = Answer(args, around, commands);
            around.Out.Flush();
            around.Error.Flush();
            return status;
        }
        catch (Exception failed) when (IsOutside(failed))
        {
            return Unheard(failed, around);
        }
    }

    static int Answer(string[] args, CommandEnvironment around, IReadOnlyList<Command> commands) =>
        Guarded(around, () => around.Refused is { } refused ? WrongUse.Print(refused, around) : Parse(args, around, commands));

    /// <summary>Does some work; a fault in it is said, and becomes an exit status.</summary>
    public static int Guarded(CommandEnvironment around, Func<int> work)
    {
        try
        {
            return work();
        }
        catch (FolderBusyException busy)
        {
            around.Error.WriteLine($"spoolbook: {busy.Message}");
            return ExitStatus.Busy;
        }
        catch (Exception failed) when (IsOutside(failed))
        {
            // Where it is the output that failed, this fails again, and is said once.
            LastResort.PrintFound(around.Progress);
            around.Out.Flush();
            around.Error.WriteLine($"spoolbook: {Plain.Escaped(failed.Message)}");
            return ExitStatus.OutsideFailed;
        }
        catch (Exception broken)
        {
            return LastResort.Say(broken, around);
        }
    }

    // Nobody reads the output any more, or the disk that it goes to is full.
    static int Unheard(Exception failed, CommandEnvironment around)
    {
        try
        {
            around.Error.WriteLine($"spoolbook: what it has to say cannot be written out: {Plain.Escaped(failed.Message)}");
            around.Error.Flush();
        }
        catch (Exception closed) when (IsOutside(closed))
        {
            // There is nowhere left to say it.
        }

        return ExitStatus.OutsideFailed;
    }

    static bool IsOutside(Exception failed) => failed is IOException or UnauthorizedAccessException;

    /// <summary>A command line with <c>help</c> as a word: <c>help check</c> asks what <c>check --help</c> does.</summary>
    public static string[] AskedInWords(string[] args) => args is ["help", .. var about] ? [.. about, "--help"] : args;

    /// <summary>The program with its commands, and with the options that each has.</summary>
    public static RootCommand Root(IEnumerable<Command> commands, CommandEnvironment around)
    {
        var root = new RootCommand(
            "Papers for a 16 mm shoot: checks the record and prints camera reports, the lab order, the footage workbook and "
                + "the wrap summary."
        );
        foreach (var command in commands)
        {
            root.Add(command);
        }

        root.Add(ColourOption.Build());
        foreach (var option in root.Options)
        {
            option.Action = option switch
            {
                HelpOption { Action: HelpAction usual } => new HelpWithExamples(usual, around),
                VersionOption => new VersionAction(),
                _ => option.Action,
            };
        }

        return root;
    }

    static int Parse(string[] args, CommandEnvironment around, IReadOnlyList<Command> commands)
    {
        var root = Root(commands, around);
        var parsed = root.Parse(AskedInWords(args));
        if (WrongUse.UnknownOption(parsed) is { } unknown)
        {
            return WrongUse.Print([unknown], parsed, around);
        }

        if (parsed.Errors.Count > 0)
        {
            return WrongUse.Print(WrongUse.Objections(parsed), parsed, around);
        }

        return parsed.Invoke(
            new InvocationConfiguration
            {
                Output = around.Out,
                Error = around.Error,
                EnableDefaultExceptionHandler = false,
            }
        );
    }
}
