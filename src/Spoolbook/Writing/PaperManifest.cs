using System.Text;

namespace Spoolbook.Writing;

/// <summary>Which papers Spoolbook wrote into a folder, with a digest of each, as <c>sha256sum</c> writes and checks them.</summary>
internal static class PaperManifest
{
    /// <summary>Where it lies, from the papers' folder.</summary>
    public static string Name { get; } = WorkFolder.NameInHidden("papers.sha256");

    /// <summary>The papers by name with what Spoolbook wrote; nothing where there is no manifest.</summary>
    public static IReadOnlyDictionary<string, string> Read(string folder)
    {
        var path = Path.Combine(folder, Name);
        var papers = new Dictionary<string, string>(StringComparer.Ordinal);
        if (!File.Exists(path))
        {
            return papers;
        }

        foreach (var line in Encoding.UTF8.GetString(FileState.Bytes(path)).Split('\n'))
        {
            // A name that leads to another folder is none of a paper.
            if (line.Split("  ", 2) is [var state, var name] && Path.GetFileName(name) == name)
            {
                papers[name] = state;
            }
        }

        return papers;
    }

    public static byte[] Write(IEnumerable<(string Name, string State)> papers) =>
        Encoding.UTF8.GetBytes(string.Concat(papers.OrderBy(p => p.Name, StringComparer.Ordinal).Select(p => $"{p.State}  {p.Name}\n")));
}
