using System.CommandLine;
using Spoolbook.Printing;

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
}
