using System.CommandLine;
using System.Text;
using Spoolbook.Commands;

namespace Spoolbook.Acceptance.Manual;

/// <summary>All commands on one page, as Markdown.</summary>
static class CommandPage
{
    public static string Write()
    {
        var text = new StringBuilder(
            "# The commands\n\nWritten by `scripts/manual` from the commands themselves; `spoolbook COMMAND --help` and "
                + "`man spoolbook-COMMAND` say the same. What all of them have in common is at the end.\n\n"
        );
        var root = CommandTree.Root();
        foreach (var (name, command) in CommandTree.All(root).Skip(1))
        {
            text.Append(name.Contains(' ', StringComparison.Ordinal) ? "### " : "## ").Append("spoolbook ").Append(name).Append("\n\n");
            text.Append(command.Description).Append("\n\n");
            var usage = command.Arguments.Select(CommandTree.Usage).Prepend(name);
            text.Append("```\nspoolbook ").AppendJoin(' ', CommandTree.Under(command).Any() ? usage.Append("SUM") : usage);
            text.Append(" [options]\n```\n\n");
            foreach (var argument in command.Arguments)
            {
                text.Append("- `").Append(argument.Name.ToUpperInvariant()).Append("`: ").Append(argument.Description).Append('\n');
            }

            foreach (var option in CommandTree.Options(command))
            {
                text.Append("- ").Append(Names(option)).Append(": ").Append(option.Description).Append('\n');
            }

            text.Append("\n```\n");
            foreach (var (line, about) in Examples.Of(name))
            {
                text.Append($"spoolbook {line}   # {about}\n");
            }

            text.Append("```\n\n");
        }

        text.Append("## Every command\n\n");
        foreach (var option in CommandTree.Options(root).Where(o => o.Recursive))
        {
            text.Append("- ").Append(Names(option)).Append(": ").Append(option.Description).Append('\n');
        }

        return text.Append('\n').Append(Ends).ToString();
    }

    const string Ends =
        "`--` ends the options: what follows is taken as it is. `-` in place of a file is standard input.\n\nExit status: 0 all is well; 1 "
        + "errors in the production or the table (with `--strict`, warnings), and nothing written over; 2 the command was used wrongly; 3 "
        + "something outside failed, a disk or a permission; 4 another process is writing there, and nothing was changed; 70 Spoolbook "
        + "itself broke.\n";

    static string Names(Option option)
    {
        var value = CommandTree.Value(option);
        var names = option.Aliases.Where(n => n is not ("/?" or "/h" or "-?")).Prepend(option.Name).OrderBy(n => n.Length);
        return string.Join(", ", names.Select(n => $"`{n}`"))
            + (
                value.Length == 0 ? ""
                : CommandTree.IsValueOptional(option) ? $" [`{value}`]"
                : $" `{value}`"
            );
    }
}
