namespace Spoolbook.Printing;

/// <summary>Lists the files that were written.</summary>
internal static class PaperFolderPrinter
{
    /// <param name="kind">What the files are: <c>papers</c>.</param>
    /// <param name="isBrief">Whether their names are left out.</param>
    public static void Print(
        IReadOnlyList<(string Name, WriteResult What)> files,
        string kind,
        string folder,
        CommandEnvironment around,
        bool isBrief = false
    )
    {
        var ink = new Ink(around.Colour);
        var made = files.Where(s => s.What != WriteResult.Removed).ToList();
        var removed = files.Except(made).ToList();
        var written = made.Where(s => s.What != WriteResult.Same).ToList();
        around.Out.WriteLine(
            written.Count switch
            {
                0 => $"{ink.Bold("Nothing changed")}: all {made.Count} {kind} in {Relative(folder, around)} are as they were.",
                _ => $"{ink.Bold($"Wrote {written.Count} of {made.Count} {kind}")} to {Relative(folder, around)}{(isBrief ? "." : ":")}",
            }
        );
        foreach (var (name, what) in isBrief ? [] : written)
        {
            around.Out.WriteLine($"  {name}{(what == WriteResult.Changed ? ink.Dim(" (changed)") : "")}");
        }

        if (removed.Count > 0)
        {
            around.Out.WriteLine($"{ink.Bold($"Removed {removed.Count}")} that Spoolbook wrote and no longer makes:");
            removed.ForEach(paper => around.Out.WriteLine($"  {paper.Name}"));
        }
    }

    static string Relative(string folder, CommandEnvironment around)
    {
        var relative = Path.GetRelativePath(around.Folder, folder);
        return Plain.Escaped((relative.StartsWith("..", StringComparison.Ordinal) ? folder : relative).Replace('\\', '/')) + "/";
    }
}
