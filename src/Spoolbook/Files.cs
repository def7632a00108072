using System.CommandLine;
using Spoolbook.Papers.Pages;
using Spoolbook.Writing;

namespace Spoolbook;

/// <summary>Where papers come from and go to.</summary>
internal static class Files
{
    /// <summary>The option that names a folder of templates of one's own.</summary>
    public static Option<string?> Templates(CommandEnvironment around)
    {
        var templates = new Option<string?>("--templates")
        {
            Description = "A folder of templates of your own: a file found there takes the place of the house's.",
        };
        templates.Validators.Add(given =>
        {
            if (given.GetValueOrDefault<string?>() is { } own && !Directory.Exists(Path.Combine(around.Folder, own)))
            {
                given.AddError($"there is no folder of templates at '{own}'.");
            }
        });
        return templates;
    }

    /// <summary>The house's templates, under a folder of one's own if there is one.</summary>
    public static ITemplateSource Templates(string? folder, CommandEnvironment around) =>
        new HouseTemplates(folder is null ? null : new TemplateFolder(Path.Combine(around.Folder, folder)));

    /// <summary>Where papers go unless told otherwise: the folder <c>papers</c> beside the sheets.</summary>
    public static string PaperFolder(string path, CommandEnvironment around) =>
        Path.Combine(WorkFolder.OfProduction(path, around), WorkFolder.PapersName);
}
