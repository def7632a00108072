namespace Spoolbook.TestSupport;

/// <summary>A reference page that the code writes. A test compares it with the one in the repository.</summary>
static class ReferencePage
{
    /// <summary>
    /// Writes the page out for the script, as a test must not change the repository, and fails where the committed one
    /// is older.
    /// </summary>
    public static void Holds(string page, string room, string name, string script)
    {
        var received = Path.Combine(AppContext.BaseDirectory, "reference", name);
        Directory.CreateDirectory(Path.GetDirectoryName(received)!);
        File.WriteAllText(received, page);

        var kept = Path.Combine(Repository.Root, "src", room, name);
        Assert.True(File.Exists(kept) && page == File.ReadAllText(kept), $"src/{room}/{name} is out of date: run scripts/{script}");
    }
}
