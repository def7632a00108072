namespace Spoolbook.TestSupport;

/// <summary>The test productions in the repository.</summary>
static class TestFolders
{
    /// <summary>Productions with mistakes, a folder each, named after the mistake.</summary>
    public static string Broken { get; } = InTests("broken");

    /// <summary>Productions without mistakes, a folder each, of different kinds.</summary>
    public static string Clean { get; } = InTests("productions");

    /// <summary>The names of the folders in a folder, in order.</summary>
    public static IEnumerable<string> NamesIn(string folder) =>
        Directory.EnumerateDirectories(folder).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal);

    /// <summary>The command's argument for a folder: the folder, or the one file in it that has everything.</summary>
    public static string ProductionIn(string folder)
    {
        var alone = Directory.GetFiles(folder, "*.yaml");
        var isOneFile =
            alone.Length == 1 && !Directory.Exists(Path.Combine(folder, "rolls")) && Path.GetFileName(alone[0]) != "production.yaml";
        return isOneFile ? alone[0] : folder;
    }

    static string InTests(string name) => Path.Combine(Repository.Root, "tests", "Spoolbook.Acceptance", name);
}
