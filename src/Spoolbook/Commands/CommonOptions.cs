using System.CommandLine;
using Spoolbook.Printing;

namespace Spoolbook.Commands;

/// <summary>Arguments and options that several commands share.</summary>
internal static class CommonOptions
{
    public static Argument<string> Folder(CommandEnvironment around)
    {
        var folder = new Argument<string>("production")
        {
            Description = "The production's folder (production.yaml, stock.yaml, kit.yaml, rolls/*.yaml), or one file with all of it.",
        };
        folder.Validators.Add(given =>
        {
            if (given.GetValueOrDefault<string>() is { } path && !Path.Exists(Path.Combine(around.Folder, path)))
            {
                given.AddError($"there is no folder or file '{path}' here. Name the folder that holds production.yaml.");
            }
        });
        return folder;
    }

    public static Option<FindingFormat> Format() =>
        new("--format")
        {
            Description = "How findings are printed: text, json, or sarif (SARIF 2.1.0, for editors and code hosts).",
            DefaultValueFactory = _ => FindingFormat.Text,
        };
}
