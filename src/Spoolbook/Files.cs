using System.CommandLine;
using Spoolbook.Papers.Pages;
using Spoolbook.Writing;

namespace Spoolbook;

/// <summary>Where templates come from and papers go.</summary>
internal static class Files
{
    /// <summary>The option for another folder of the papers.</summary>
    public static Option<string?> Out() =>
        new("--out") { Description = "Where the papers go; the folder 'papers' in the production's unless given.", HelpName = "folder" };

    /// <summary>The option to print in spite of errors.</summary>
    public static Option<bool> Draft() =>
        new("--draft") { Description = "Print even where there are errors; every page then says DRAFT and lists them." };

    /// <summary>The option for a folder of the user's own templates.</summary>
    public static Option<string?> Templates(CommandEnvironment around)
    {
        var templates = new Option<string?>("--templates")
        {
            Description = "A folder of templates of your own: a file found there takes the place of the house's.",
            HelpName = "folder",
        };
        templates.Validators.Add(given =>
        {
            if (given.GetValueOrDefault<string?>() is { } own && Objection(own, Path.Combine(around.Folder, own)) is { } objection)
            {
                given.AddError(objection);
            }
        });
        return templates;
    }

    static string? Objection(string own, string path)
    {
        if (!Directory.Exists(path))
        {
            return File.Exists(path)
                ? $"'{own}' is a file, and --templates wants the folder that it is in."
                : $"there is no folder of templates at '{own}'.";
        }

        try
        {
            _ = Directory.EnumerateFileSystemEntries(path).FirstOrDefault();
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return $"the folder of templates '{own}' cannot be looked into: see who may read it.";
        }
    }

    /// <summary>The house's templates, with the user's own folder over them if there is one.</summary>
    public static ITemplateSource Templates(string? folder, CommandEnvironment around) => new HouseTemplates(OwnTemplates(folder, around));

    /// <summary>The user's own folder of templates; null for none.</summary>
    public static ITemplateSource? OwnTemplates(string? folder, CommandEnvironment around) =>
        folder is null ? null : new TemplateFolder(Path.Combine(around.Folder, folder));

    /// <summary>Where papers go unless told otherwise: the folder <c>papers</c> beside the sheets.</summary>
    public static string PaperFolder(string path, CommandEnvironment around) =>
        Path.Combine(WorkFolder.OfProduction(path, around), WorkFolder.PapersName);
}
