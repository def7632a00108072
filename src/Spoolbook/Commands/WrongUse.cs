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
        var commands = parsed.CommandResult.Command.Subcommands.Where(command => !command.Hidden).Select(c => c.Name).ToList();
        if (commands.Count == 0)
        {
            return parsed.Errors.Select(error => error.Message);
        }

        return parsed.UnmatchedTokens is not [var named, ..]
            ? [$"say what to do: {string.Join(", ", commands)}."]
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

    /// <summary>What is wrong with the first word that looks like an option and is none; null where there is no such word.</summary>
    public static string? UnknownOption(ParseResult parsed)
    {
        var words = parsed.Tokens.TakeWhile(token => token.Type != TokenType.DoubleDash).Where(token => token.Type == TokenType.Argument);
        if (parsed.Action is HelpWithExamples || words.Select(token => token.Value).FirstOrDefault(IsLikeAnOption) is not { } named)
        {
            return null;
        }

        var written = named.Split('=', 2)[0];
        var there = Options(parsed.CommandResult).Where(o => !o.Hidden).SelectMany(o => o.Aliases.Prepend(o.Name)).ToList();
        return written.StartsWith("--", StringComparison.Ordinal) && Nearest(written, there) is { } near
            ? $"there is no option '{written}' here. Did you mean {near}?"
            : $"there is no option '{written}' here.";
    }

    // An option that was cut short means the one that it begins.
    static string? Nearest(string written, List<string> there) =>
        there.Where(name => written.Length > 3 && name.StartsWith(written, StringComparison.Ordinal)).Take(2).ToList() is [var only]
            ? only
            : Likeness.Nearest(written, there);

    // A figure below nought, and a dash alone for standard input, are none.
    static bool IsLikeAnOption(string word) => word.Length > 1 && word[0] == '-' && (char.IsAsciiLetter(word[1]) || IsLong(word));

    static bool IsLong(string word) => word.Length > 2 && word[1] == '-' && char.IsAsciiLetter(word[2]);

    static IEnumerable<Option> Options(CommandResult result) =>
        result.Parent is CommandResult parent
            ? result.Command.Options.Concat(Options(parent).Where(option => option.Recursive))
            : result.Command.Options;

    /// <summary>A command's whole name: <c>reckon length</c>; empty for the program itself.</summary>
    public static string NameOf(CommandResult result) => string.Concat(Names(result)).TrimEnd();

    // From the outermost command inwards; the root is the program itself.
    static IEnumerable<string> Names(CommandResult result) =>
        result.Command is RootCommand ? [] : [.. result.Parent is CommandResult parent ? Names(parent) : [], result.Command.Name + " "];
}
