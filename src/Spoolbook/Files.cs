using Spoolbook.Papers;
using Spoolbook.Papers.Pages;
using Spoolbook.Reading.Files;

namespace Spoolbook;

/// <summary>What the command reads from disk.</summary>
internal static class Files
{
    /// <summary>The production's files at a path, which may be relative.</summary>
    public static IProductionFiles Open(string path, Surroundings around) => new FolderFiles(Path.Combine(around.Folder, path));

    /// <summary>The house's templates, under a folder of one's own if there is one.</summary>
    public static ITemplateSource Templates(string? folder) => new HouseTemplates(folder is null ? null : new TemplateFolder(folder));

    /// <summary>Where papers go unless told otherwise: the folder <c>papers</c> beside the sheets.</summary>
    public static string Shelf(string path, Surroundings around)
    {
        var full = Path.Combine(around.Folder, path);
        return Path.Combine(File.Exists(full) ? Path.GetDirectoryName(full) ?? "" : full, "papers");
    }
}
