namespace Spoolbook.Reading.Files;

/// <summary>Where a file really is, behind its links.</summary>
public static class RealPath
{
    /// <summary>
    /// The path with every link in it followed, folder by folder; the path itself where nothing is there or a link leads nowhere.
    /// </summary>
    public static string Of(string path)
    {
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(path));
        if (Path.GetDirectoryName(full) is not { } folder)
        {
            return full;
        }

        var inside = Path.Combine(Of(folder), Path.GetFileName(full));
        try
        {
            return File.ResolveLinkTarget(inside, returnFinalTarget: true) is { } target ? Of(target.FullName) : inside;
        }
        catch (IOException)
        {
            return inside;
        }
    }
}
