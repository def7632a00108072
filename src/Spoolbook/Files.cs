using Spoolbook.Papers;
using Spoolbook.Papers.Pages;

namespace Spoolbook;

/// <summary>Where papers come from and go to.</summary>
internal static class Files
{
    /// <summary>The house's templates, under a folder of one's own if there is one.</summary>
    public static ITemplateSource Templates(string? folder) => new HouseTemplates(folder is null ? null : new TemplateFolder(folder));

    /// <summary>Where papers go unless told otherwise: the folder <c>papers</c> beside the sheets.</summary>
    public static string Shelf(string path, Surroundings around)
    {
        var full = Path.Combine(around.Folder, path);
        return Path.Combine(File.Exists(full) ? Path.GetDirectoryName(full) ?? "" : full, "papers");
    }
}
