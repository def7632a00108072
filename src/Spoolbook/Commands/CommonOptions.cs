using System.CommandLine;
using Spoolbook.Printing;
using Spoolbook.Reading.Files;

namespace Spoolbook.Commands;

/// <summary>Arguments and options that several commands share.</summary>
internal static class CommonOptions
{
    /// <summary>What stands for standard input where a file is named.</summary>
    public const string StandardInput = "-";

    /// <summary>What standard input is called where a file's name is shown.</summary>
    public const string StandardInputName = "standard input";

    /// <summary>The production that a command is about, which need not be named where one is in it.</summary>
    public static Argument<string?> Production() =>
        new("production")
        {
            Description =
                "The production's folder (production.yaml, stock.yaml, kit.yaml, rolls/*.yaml), any file of it, or one file with all "
                + "of it. If left out: the folder that you are in, or the nearest above that holds a production.",
            Arity = ArgumentArity.ZeroOrOne,
        };

    /// <summary>The productions that a command is about, or folders of them.</summary>
    public static Argument<string[]> Productions() =>
        new("production")
        {
            Description =
                "The production's folder (production.yaml, stock.yaml, kit.yaml, rolls/*.yaml), any file of it, or one file with all "
                + "of it. Several can be named, and a folder with productions in it means all of them. If left out: the folder that "
                + "you are in, or the nearest above that holds a production.",
            Arity = ArgumentArity.ZeroOrMore,
        };

    /// <summary>Refuses a command line where one of the productions is not there, or there is none to work on.</summary>
    public static void Want(this Command command, Argument<string[]> productions, CommandEnvironment around) =>
        command.Validators.Add(given =>
        {
            var named = given.GetValue(productions) ?? [];
            var objection =
                named.Length == 0
                    ? SchoolPlace.IsSchool(around.Folder)
                        ? null
                        : ProductionPlace.Objection(null, around)
                    : named.Select(name => ProductionPlace.Objection(name, around)).FirstOrDefault(said => said is not null);
            if (objection is not null)
            {
                given.AddError(objection);
            }
        });

    /// <summary>Refuses a command line where there is no production to work on.</summary>
    public static void Want(this Command command, Argument<string?> production, CommandEnvironment around) =>
        command.Validators.Add(given =>
        {
            if (ProductionPlace.Objection(given.GetValue(production), around) is { } objection)
            {
                given.AddError(objection);
            }
        });

    /// <summary>The production of a command line that was not refused.</summary>
    public static string Given(this ParseResult parsed, Argument<string?> production, CommandEnvironment around) =>
        ProductionPlace.Of(parsed.GetValue(production), around)!;

    public static Option<FindingFormat> Format() =>
        Choice.Of<FindingFormat>(
            "--format",
            "How findings are printed: text, json, sarif (SARIF 2.1.0, for editors and code hosts), or github (its workflow commands)."
        );

    /// <summary>How the findings of several productions are printed.</summary>
    public static ISeveralForm Several(FindingFormat format, bool makesPapers, Loudness loudness) =>
        format switch
        {
            FindingFormat.Json => new SeveralJson(),
            FindingFormat.Sarif => new SeveralSarif(),
            FindingFormat.Github => new SeveralCommands(),
            _ => new SeveralText(makesPapers, loudness),
        };
}
