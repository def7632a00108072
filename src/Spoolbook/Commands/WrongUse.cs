using System.CommandLine;
using System.CommandLine.Parsing;
using Spoolbook.Printing;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Commands;

/// <summary>The messages for wrong use of the command.</summary>
internal static class WrongUse
{
    /// <summary>Says one thing that is wrong around the command, and not in its own words.</summary>
    public static int Print(string objection, CommandEnvironment around)
    {
        around.Error.WriteLine($"spoolbook: {Plain.Escaped(objection)}");
        return ExitStatus.WrongUse;
    }

    public static int Print(IEnumerable<string> objections, ParseResult parsed, CommandEnvironment around)
    {
        foreach (var objection in objections)
        {
            around.Error.WriteLine($"spoolbook: {Plain.Escaped(objection)}");
        }

        around.Error.WriteLine($"Try: spoolbook {string.Concat(Names(parsed.CommandResult))}--help");
        return ExitStatus.WrongUse;
    }

    /// <summary>What is wrong with a command line; for a missing or unknown command only that, with the list of commands.</summary>
    public static IEnumerable<string> Objections(ParseResult parsed)
    {
        var commands = parsed.CommandResult.Command.Subcommands.Select(command => command.Name).ToList();
        if (commands.Count == 0)
        {
            return parsed.Errors.Select(error => error.Message);
        }

        return parsed.UnmatchedTokens is not [var named, ..] ? [$"say what to do: {string.Join(", ", commands)}."]
            : named.StartsWith('-') ? [$"there is no option '{named}' here."]
            :
            [
                $"there is no '{named}'. "
                    + (
                        Likeness.Nearest(named, commands) is { } near
                            ? $"Did you mean {near}?"
                            : $"There are: {string.Join(", ", commands)}."
                    ),
            ];
    }

    // From the outermost command inwards; the root is the program itself.
    static IEnumerable<string> Names(CommandResult result) =>
        result.Command is RootCommand ? [] : [.. result.Parent is CommandResult parent ? Names(parent) : [], result.Command.Name + " "];
}
