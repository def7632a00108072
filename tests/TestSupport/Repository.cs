namespace Spoolbook.TestSupport;

/// <summary>Where the house's own files lie: every test project finds them here.</summary>
static class Repository
{
    /// <summary>The first folder above the tests that holds the solution.</summary>
    public static string Root { get; } = Find();

    /// <summary>The production that the documentation shows.</summary>
    public static string Sample => Path.Combine(Root, "sample-production");

    /// <summary>The files that a production is made of: its sheets, and the drawings that lie beside production.yaml.</summary>
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
