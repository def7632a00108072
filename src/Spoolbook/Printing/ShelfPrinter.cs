using Spoolbook.Writing;

namespace Spoolbook.Printing;

/// <summary>Says which files were written.</summary>
internal static class ShelfPrinter
{
    /// <param name="kind">What the files are: <c>papers</c>.</param>
    public static void Print(IReadOnlyList<(string Name, Shelved What)> shelved, string kind, string folder, Surroundings around)
    {
        var ink = new Ink(around.Colour);
        var written = shelved.Where(s => s.What != Shelved.Same).ToList();
        around.Out.WriteLine(written.Count switch
        {
            0 => $"{ink.Bold("Nothing changed")}: all {shelved.Count} {kind} in {Relative(folder, around)} are as they were.",
            _ => $"{ink.Bold($"Wrote {written.Count} of {shelved.Count} {kind}")} to {Relative(folder, around)}:",
        });
        foreach (var (name, what) in written)
        {
            around.Out.WriteLine($"  {name}{(what == Shelved.Changed ? ink.Dim(" (changed)") : "")}");
        }
    }

    static string Relative(string folder, Surroundings around)
    {
        var relative = Path.GetRelativePath(around.Folder, folder);
        return (relative.StartsWith("..", StringComparison.Ordinal) ? folder : relative).Replace('\\', '/') + "/";
    }
}
