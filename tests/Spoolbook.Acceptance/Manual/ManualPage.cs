using System.CommandLine;
using System.Text;

namespace Spoolbook.Acceptance.Manual;

/// <summary>A command's manual page, in the macros of man(7).</summary>
sealed class ManualPage
{
    readonly StringBuilder _text = new();

    /// <summary>The pages by the names of their files: one of the program, one of each command.</summary>
    /// <param name="date">The day of the version, as 2026-11-29.</param>
    public static IEnumerable<(string File, string Text)> All(string version, string date)
    {
        var root = CommandTree.Root();
        var names = CommandTree.Under(root).Select(c => c.Name).ToList();
        yield return ("spoolbook.1", new ManualPage().OfProgram(root, version, date));
        foreach (var command in CommandTree.Under(root))
        {
            yield return ($"spoolbook-{command.Name}.1", new ManualPage().OfCommand(command, names, version, date));
        }
    }

    string OfProgram(RootCommand root, string version, string date)
    {
        Head("spoolbook", version, date);
        Section("NAME");
        Line("spoolbook \\- papers for a 16 mm shoot");
        Section("SYNOPSIS");
        Line(".B spoolbook");
        Line(".I command");
        Line("[options]");
        Section("DESCRIPTION");
        Text(root.Description!);
        Section("COMMANDS");
        foreach (var command in CommandTree.Under(root))
        {
            Term($"\\fBspoolbook\\-{Escaped(command.Name)}\\fR(1)", command.Description!);
        }

        Options(CommandTree.Options(root));
        Ends();
        Section("ENVIRONMENT");
        Term("\\fBNO_COLOR\\fR", "No colour, whatever the terminal.");
        Term("\\fBSOURCE_DATE_EPOCH\\fR", "The date of making, in whole seconds since 1970: two runs then give the same bytes.");
        Term("\\fBSPOOLBOOK_TRACE\\fR", "Where Spoolbook itself breaks, print the stack trace too.");
        Examples("");
        return _text.ToString();
    }

    string OfCommand(Command command, IEnumerable<string> others, string version, string date)
    {
        Head("spoolbook-" + command.Name, version, date);
        Section("NAME");
        Line($"spoolbook\\-{Escaped(command.Name)} \\- {Escaped(Summary(command))}");
        Section("SYNOPSIS");
        Line($".B spoolbook {Escaped(command.Name)}");
        var inner = CommandTree.Under(command).ToList();
        if (inner.Count > 0)
        {
            Line($".I {string.Join('|', inner.Select(c => Escaped(c.Name)))}");
        }

        foreach (var argument in command.Arguments)
        {
            Line($".I {Escaped(CommandTree.Usage(argument))}");
        }

        Line("[options]");
        Section("DESCRIPTION");
        Text(command.Description!);
        foreach (var argument in command.Arguments)
        {
            Term($"\\fI{Escaped(CommandTree.Usage(argument))}\\fR", argument.Description ?? "");
        }

        Options(CommandTree.Options(command));
        foreach (var sum in inner)
        {
            Section($"{command.Name} {sum.Name}".ToUpperInvariant());
            Text(sum.Description!);
            foreach (var argument in sum.Arguments)
            {
                Term($"\\fI{Escaped(CommandTree.Usage(argument))}\\fR", argument.Description ?? "");
            }

            CommandTree.Options(sum).ToList().ForEach(Option);
        }

        Ends();
        Examples(command.Name);
        Section("SEE ALSO");
        var see = others.Where(name => name != command.Name).Select(name => $"\\fBspoolbook\\-{Escaped(name)}\\fR(1)");
        Line(string.Join(",\n", see.Prepend("\\fBspoolbook\\fR(1)")));
        return _text.ToString();
    }

    void Head(string name, string version, string date) =>
        Line($".TH {Escaped(name).ToUpperInvariant()} 1 {date} \"Spoolbook {version}\" \"Spoolbook\"");

    void Options(IEnumerable<Option> options)
    {
        var all = options.ToList();
        if (all.Count > 0)
        {
            Section("OPTIONS");
            all.ForEach(Option);
        }
    }

    void Option(Option option)
    {
        var names = option.Aliases.Prepend(option.Name).OrderBy(n => n.Length).Where(n => !n.Contains('?') && !n.StartsWith('/'));
        var value = CommandTree.Value(option);
        var shown =
            value.Length == 0 ? ""
            : CommandTree.IsValueOptional(option) ? $" [\\fI{Escaped(value)}\\fR]"
            : $" \\fI{Escaped(value)}\\fR";
        Term(string.Join(", ", names.Select(n => $"\\fB{Escaped(n)}\\fR")) + shown, option.Description ?? "");
    }

    void Ends()
    {
        Section("EXIT STATUS");
        Term("0", "All is well.");
        Term(
            "1",
            "There are errors in the production or the table, or with \\-\\-strict warnings; nothing was written over.",
            isReady: true
        );
        Term("2", "The command was used wrongly.");
        Term("3", "Something outside failed: a disk, a permission.");
        Term("4", "Another process is writing there; nothing was changed.");
        Term("70", "Spoolbook itself broke.");
    }

    void Examples(string command)
    {
        Section("EXAMPLES");
        foreach (var (line, about) in Spoolbook.Commands.Examples.Of(command))
        {
            Term($"\\fBspoolbook {Escaped(line)}\\fR", about);
        }
    }

    static string Summary(Command command) => command.Description!.Split(['.', ':', ','])[0];

    void Section(string name) => Line($".SH {name}");

    void Term(string term, string about, bool isReady = false)
    {
        Line(".TP");
        Line(term);
        if (isReady)
        {
            Line(about);
        }
        else
        {
            Text(about);
        }
    }

    // A sentence a line, as the page's readers like it.
    void Text(string text) => Line(Escaped(text).Replace(". ", ".\n", StringComparison.Ordinal));

    void Line(string line) => _text.Append(line).Append('\n');

    // A hyphen is a minus that can be copied; a point or an apostrophe at the beginning of a line would be a command.
    static string Escaped(string text)
    {
        var escaped = text.Replace("\\", "\\e", StringComparison.Ordinal).Replace("-", "\\-", StringComparison.Ordinal);
        return escaped is ['.' or '\'', ..] ? "\\&" + escaped : escaped;
    }
}
