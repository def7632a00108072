namespace Spoolbook.TestSupport;

/// <summary>A page of reference that the code writes: a test holds it against the one kept in the repository.</summary>
static class ReferencePage
{
    /// <summary>Leaves the page for the script to take over (a test only looks), and fails where the kept one is older.</summary>
    public static void Holds(string page, string room, string name, string script)
    {
        var received = Path.Combine(AppContext.BaseDirectory, "reference", name);
        Directory.CreateDirectory(Path.GetDirectoryName(received)!);
        File.WriteAllText(received, page);

        var kept = Path.Combine(Repository.Root, "src", room, name);
        Assert.True(File.Exists(kept) && page == File.ReadAllText(kept), $"src/{room}/{name} is out of date: run scripts/{script}");
    }
}
