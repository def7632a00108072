namespace Spoolbook.Printing;

/// <summary>Paths with forward slashes, as findings say them.</summary>
internal static class FolderPath
{
    /// <summary>
    /// A file's path from a folder, as a path from where that folder's own is from: <c>../school.yaml</c> from <c>a/b/</c> is
    /// <c>a/school.yaml</c>.
    /// </summary>
    /// <param name="folder">Empty, or a path with a slash at its end.</param>
    public static string Joined(string folder, string file)
    {
        var parts = new List<string>();
        foreach (var part in (folder + file).Split('/'))
        {
            if (part == ".." && parts.Count > 0 && parts[^1] is not (".." or ""))
            {
                parts.RemoveAt(parts.Count - 1);
            }
            else
            {
                parts.Add(part);
            }
        }

        return string.Join('/', parts);
    }
}
