namespace Spoolbook.TestSupport;

/// <summary>The house's own files, for every test project.</summary>
static class Repository
{
    /// <summary>The first folder above the tests with the solution in it.</summary>
    public static string Root { get; } = Find();

    /// <summary>The production in the documentation.</summary>
    public static string Sample => Path.Combine(Root, "sample-production");

    /// <summary>The files of a production: its sheets, and the drawings beside production.yaml.</summary>
    public static IEnumerable<string> FilesOf(string production) =>
        Directory.EnumerateFiles(production, "*.yaml", SearchOption.AllDirectories).Concat(Directory.EnumerateFiles(production, "*.svg"));

    static string Find()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Reports.sln")))
        {
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("The tests run outside the repository.");
        }

        return folder;
    }
}
