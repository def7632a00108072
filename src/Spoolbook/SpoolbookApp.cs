using System.CommandLine;
using Spoolbook.Commands;

namespace Spoolbook;

/// <summary>The command <c>spoolbook</c>.</summary>
public static class SpoolbookApp
{
    /// <summary>Runs one command line; returns its exit status.</summary>
    public static int Run(string[] args, Surroundings around)
    {
        try
        {
            return Parse(args, around);
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

    static int Parse(string[] args, Surroundings around)
    {
        var root = new RootCommand("Papers for a 16 mm shoot: checks what was written down and prints camera reports, the lab order, the footage workbook and the wrap summary.")
        {
            MakeCommand.Build(around),
            CheckCommand.Build(around),
            ImportCommand.Build(around),
            ExplainCommand.Build(around),
            SchemaCommand.Build(around),
            ReckonCommand.Build(around),
        };
        var parsed = root.Parse(args);
        if (parsed.Errors.Count > 0)
        {
            return WrongUse.Print(WrongUse.Objections(parsed), parsed, around);
        }

        return parsed.Invoke(new InvocationConfiguration { Output = around.Out, Error = around.Error, EnableDefaultExceptionHandler = false });
    }
}
