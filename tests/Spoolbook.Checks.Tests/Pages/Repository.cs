namespace Spoolbook.Checks.Tests.Pages;

/// <summary>Where the house's own files lie.</summary>
static class Repository
{
    public static string Root { get; } = Find();

    public static string Sample => Path.Combine(Root, "sample-production");

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
