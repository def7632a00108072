using System.CommandLine;
using System.CommandLine.Parsing;

namespace Spoolbook.Commands;

/// <summary>What is said to somebody who used the command wrongly, in one place.</summary>
internal static class WrongUse
{
    public static int Print(IEnumerable<string> objections, ParseResult parsed, Surroundings around)
    {
        foreach (var objection in objections)
        {
            around.Error.WriteLine($"spoolbook: {objection}");
        }

        around.Error.WriteLine($"Try: spoolbook {string.Concat(Names(parsed.CommandResult))}--help");
        return ExitStatus.WrongUse;
    }

    // From the outermost command inwards; the root is the program itself.
    static IEnumerable<string> Names(CommandResult result) => result.Command is RootCommand
        ? []
        : [.. result.Parent is CommandResult parent ? Names(parent) : [], result.Command.Name + " "];
}
