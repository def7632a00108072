using System.CommandLine;

namespace Spoolbook.Acceptance.Manual;

/// <summary>The commands as they are built, for pages about them.</summary>
static class CommandTree
{
    /// <summary>The program with all its commands.</summary>
    public static RootCommand Root()
    {
        var around = new CommandEnvironment(
            TextWriter.Null,
            TextWriter.Null,
            Path.GetTempPath(),
            Workbench.Made,
            Colour: false,
            Width: 100
        );
        return CommandLine.Root(SpoolbookApp.Commands(around), around);
    }

    /// <summary>A command's own commands that users type.</summary>
    public static IEnumerable<Command> Under(Command command) => command.Subcommands.Where(c => !c.Hidden);

    /// <summary>Every command by its whole name, the program itself first, with an empty one.</summary>
    public static IEnumerable<(string Name, Command Command)> All(Command command, string name = "") =>
        Under(command).SelectMany(c => All(c, $"{name} {c.Name}".Trim())).Prepend((name, command));

    /// <summary>The options of a command that users type, in the order of its help.</summary>
    public static IEnumerable<Option> Options(Command command) => command.Options.Where(o => !o.Hidden);

    /// <summary>What is typed for an option's value; empty for one that has none.</summary>
    public static string Value(Option option) =>
        option.Arity.MaximumNumberOfValues == 0 || option.ValueType == typeof(bool) || option.ValueType == typeof(void)
            ? ""
            : option.HelpName ?? option.Name.TrimStart('-');

    /// <summary>Whether an option goes without its value.</summary>
    public static bool IsValueOptional(Option option) => option.Arity.MinimumNumberOfValues == 0;

    /// <summary>An argument as in a usage line.</summary>
    public static string Usage(Argument argument)
    {
        var name = argument.Name.ToUpperInvariant() + (argument.Arity.MaximumNumberOfValues > 1 ? "…" : "");
        return argument.Arity.MinimumNumberOfValues == 0 || argument.HasDefaultValue ? $"[{name}]" : name;
    }
}
