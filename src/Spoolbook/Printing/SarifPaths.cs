namespace Spoolbook.Printing;

/// <summary>
/// Paths as URIs, relative to the folder that the command runs in, which is the repository root on a code host and the
/// workspace in an editor. For a production outside that folder, relative to the production's own.
/// </summary>
internal sealed class SarifPaths
{
    readonly string _prefix;

    SarifPaths(string baseFolder, string prefix)
    {
        Base = new Uri(baseFolder.TrimEnd(Path.DirectorySeparatorChar) + Path.DirectorySeparatorChar).AbsoluteUri;
        _prefix = prefix;
    }

    /// <summary>The folder that paths are relative to, as an absolute URI that ends with a slash.</summary>
    public string Base { get; }

    /// <summary>For a production at a path that may be relative to a folder.</summary>
    public static SarifPaths For(string production, string folder)
    {
        var full = Path.GetFullPath(Path.Combine(folder, production));
        var home = File.Exists(full) ? Path.GetDirectoryName(full)! : full;
        var inside = Path.GetRelativePath(folder, home);
        return
            inside == ".." || inside.StartsWith(".." + Path.DirectorySeparatorChar, StringComparison.Ordinal) || Path.IsPathRooted(inside)
            ? new SarifPaths(home, "")
            : new SarifPaths(folder, inside == "." ? "" : inside.Replace(Path.DirectorySeparatorChar, '/') + "/");
    }

    /// <summary>A file of the production as a path in the folder.</summary>
    public string InFolder(string file) => FolderPath.Joined(_prefix, file);

    /// <summary>A file of the production as a relative URI.</summary>
    public string Of(string file) => string.Join('/', InFolder(file).Split('/').Select(Uri.EscapeDataString));
}
