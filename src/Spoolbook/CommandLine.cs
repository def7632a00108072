using System.CommandLine;
using Spoolbook.Commands;
using Spoolbook.Writing;

namespace Spoolbook;

/// <summary>Runs a command line with the commands that a program has.</summary>
internal static class CommandLine
{
    public static int Run(string[] args, CommandEnvironment around, IReadOnlyList<Command> commands)
    {
        try
        {
            return Parse(args, around, commands);
        }
        catch (FolderBusyException busy)
        {
            around.Error.WriteLine($"spoolbook: {busy.Message}");
            return ExitStatus.Busy;
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            around.Error.WriteLine($"spoolbook: {failed.Message}");
            return ExitStatus.OutsideFailed;
        }
        finally
        {
            around.Out.Flush();
            around.Error.Flush();
        }
    }

    static int Parse(string[] args, CommandEnvironment around, IReadOnlyList<Command> commands)
    {
        var root = new RootCommand(
            "Papers for a 16 mm shoot: checks what was written down and prints camera reports, the lab order, the footage workbook and "
                + "the wrap summary."
        );
        foreach (var command in commands)
        {
            root.Add(command);
        }

        var parsed = root.Parse(args);
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
