namespace Spoolbook.Printing;

/// <summary>Lists the files that were written.</summary>
internal sealed class PaperFolderPrinter(CommandEnvironment around)
{
    /// <summary>Whether the files' names are left out.</summary>
    public bool IsBrief { get; init; }

    /// <summary>Whether they would be written, and were not.</summary>
    public bool IsDry { get; init; }

    /// <summary>Whether files that are as they were are named too.</summary>
    public bool NamesAll { get; init; }

    /// <param name="kind">What the files are: <c>papers</c>.</param>
    public void Print(IReadOnlyList<(string Name, WriteResult What)> files, string kind, string folder)
    {
        var ink = new Ink(around.Colour);
        var made = files.Where(s => s.What != WriteResult.Removed).ToList();
        var removed = files.Except(made).ToList();
        var written = made.Where(s => s.What != WriteResult.Same).ToList();
        var listed =
            IsBrief ? []
            : NamesAll ? made
            : written;
        var wrote = IsDry ? "Would write" : "Wrote";
        var end = listed.Count == 0 ? "." : ":";
        around.Out.WriteLine(
            written.Count switch
            {
                0 =>
                    $"{ink.Bold(IsDry ? "Nothing would change" : "Nothing changed")}: all {made.Count} {kind} in {Relative(folder)} are as "
                        + $"they were{end}",
                _ => $"{ink.Bold($"{wrote} {written.Count} of {made.Count} {kind}")} to {Relative(folder)}{end}",
            }
        );
        foreach (var (name, what) in listed)
        {
            var note = what switch
            {
                WriteResult.Changed => " (changed)",
                WriteResult.Same => " (as it was)",
                _ => "",
            };
            around.Out.WriteLine($"  {name}{(note.Length > 0 ? ink.Dim(note) : "")}");
        }

        if (removed.Count > 0)
        {
            around.Out.WriteLine(
                $"{ink.Bold($"{(IsDry ? "Would remove" : "Removed")} {removed.Count}")} that Spoolbook wrote and no longer makes:"
            );
            removed.ForEach(paper => around.Out.WriteLine($"  {paper.Name}"));
        }
    }

    string Relative(string folder)
    {
        var relative = Path.GetRelativePath(around.Folder, folder);
        return Plain.Escaped((relative.StartsWith("..", StringComparison.Ordinal) ? folder : relative).Replace('\\', '/')) + "/";
    }
}
