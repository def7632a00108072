using System.CommandLine;
using Spoolbook.Checks;
using Spoolbook.Checks.Unjudged;
using Spoolbook.Completing;
using Spoolbook.Printing;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook explain</c>: a check's page.</summary>
internal static class ExplainCommand
{
    public static Command Build(CommandEnvironment around)
    {
        var name = new OfferingArgument<string?>("check", (_, _) => Offers())
        {
            Description = "The check's name, from the brackets behind a finding, or a group's name. Without one, all of them by group.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var command = new Command("explain", "Explains a check: what it finds, why it matters, and what to do.") { name };
        command.SetAction(parsed => parsed.GetValue(name) is { } asked ? Explain(asked, around) : List([.. Catalogue.All], around));
        return command;
    }

    static IEnumerable<Offer> Offers() =>
        Catalogue
            .All.Select(page => new Offer(page.Name, page.Summary))
            .Concat(Catalogue.All.Select(page => page.Group).Distinct().Select(group => new Offer(group, "all of this group")))
            .Append(new Offer(Questions.Topic, "what no check could judge"));

    static int Explain(string name, CommandEnvironment around)
    {
        if (Catalogue.All.Where(page => page.Group == name).ToList() is { Count: > 0 } group)
        {
            return List(group, around);
        }

        if (name == Questions.Topic)
        {
            MarkdownPrinter.Print(Questions.Page, around);
            return ExitStatus.Well;
        }

        if ((Catalogue.Page(name) ?? Only(name)) is not { } page)
        {
            return Ask(name, around);
        }

        MarkdownPrinter.Print(page.Text, around);
        return ExitStatus.Well;
    }

    // A slip of the pen is asked about, since the word that it holds may be another check's.
    static CheckPage? Only(string name) =>
        Catalogue.Nearest(name) is null && Catalogue.Naming(name) is [var only] ? Catalogue.Page(only) : null;

    static int Ask(string name, CommandEnvironment around)
    {
        var what = $"spoolbook: there is no check called '{Plain.Escaped(name)}'.";
        if (Catalogue.Nearest(name) is { } near)
        {
            around.Error.WriteLine($"{what} Did you mean {near}?");
        }
        else if (Catalogue.Naming(name).Select(Catalogue.Page).OfType<CheckPage>().ToList() is { Count: > 0 } those)
        {
            around.Error.WriteLine($"{what} Which of these do you mean?");
            those.ForEach(page => around.Error.WriteLine(Line(page)));
        }
        else
        {
            around.Error.WriteLine($"{what} `spoolbook explain` alone lists them all.");
        }

        return ExitStatus.WrongUse;
    }

    static int List(IReadOnlyCollection<CheckPage> pages, CommandEnvironment around)
    {
        var ink = new Ink(around.Colour);
        foreach (var group in pages.GroupBy(p => p.Group))
        {
            around.Out.WriteLine(ink.Bold(group.Key));
            foreach (var page in group)
            {
                around.Out.WriteLine(Line(page));
            }
        }

        if (pages.Skip(1).Select(p => p.Group).Distinct().Count() > 1)
        {
            around.Out.WriteLine(ink.Bold(Questions.Topic));
            around.Out.WriteLine("  What no check could judge, and which note lets it be judged.");
        }

        return ExitStatus.Well;
    }

    static string Line(CheckPage page) => "  " + page.Name.PadRight(34) + " " + page.Summary;
}
