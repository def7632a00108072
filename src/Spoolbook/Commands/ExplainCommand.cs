using System.CommandLine;
using Spoolbook.Checks;
using Spoolbook.Printing;
using Spoolbook.Reading;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook explain</c>: what a check is about.</summary>
internal static class ExplainCommand
{
    public static Command Build(Surroundings around)
    {
        var name = new Argument<string?>("check") { Description = "The check's name, as it stands in brackets behind a finding; all of them by group if left out.", Arity = ArgumentArity.ZeroOrOne };
        var command = new Command("explain", "Tells what a check says, why it matters, and what to do.") { name };
        command.SetAction(parsed => parsed.GetValue(name) is { } asked ? Explain(asked, around) : ListAll(around));
        return command;
    }

    static int Explain(string name, Surroundings around)
    {
        if (SheetChecks.All.FirstOrDefault(c => c.Name == name) is { Summary: { } summary })
        {
            // What reading finds explains itself at its place; it has a sentence, and no page.
            around.Out.WriteLine(new Ink(around.Colour).Bold(name));
            around.Out.WriteLine(summary);
            return ExitStatus.Well;
        }

        if (Catalogue.Page(name) is not { } page)
        {
            around.Error.WriteLine($"spoolbook: there is no check called '{name}'.{(Catalogue.Nearest(name) is { } near ? $" Did you mean {near}?" : "")}");
            return ExitStatus.WrongUse;
        }

        MarkdownPrinter.Print(page.Text, around);
        return ExitStatus.Well;
    }

    static int ListAll(Surroundings around)
    {
        var ink = new Ink(around.Colour);
        var all = Catalogue.All.Select(p => (p.Name, p.Summary)).Concat(SheetChecks.All.Select(c => (c.Name, c.Summary)));
        foreach (var group in all.OrderBy(c => c.Name, StringComparer.Ordinal).GroupBy(c => c.Name[..c.Name.IndexOf('/', StringComparison.Ordinal)]))
        {
            around.Out.WriteLine(ink.Bold(group.Key));
            foreach (var (name, summary) in group)
            {
                around.Out.WriteLine($"  {name,-34} {summary}");
            }
        }

        return ExitStatus.Well;
    }
}
