using System.Collections.Immutable;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Files;

/// <summary>A production folder on disk, or one file that holds everything.</summary>
public sealed class FolderFiles : IProductionFiles
{
    const string RollsFolder = "rolls";

    readonly string _root;

    /// <summary>The folder or file at that path; it need not exist.</summary>
    public FolderFiles(string path)
    {
        IsOneFile = File.Exists(path);
        var folder = IsOneFile ? Path.GetDirectoryName(Path.GetFullPath(path)) : path;
        _root = folder ?? path;
        Names = IsOneFile ? [Path.GetFileName(path)] : [.. TopFiles(), .. RollFiles()];
    }

    /// <inheritdoc/>
    public bool IsOneFile { get; }

    /// <inheritdoc/>
    public ImmutableArray<string> Names { get; }

    /// <summary>Where a file of <see cref="Names"/> lies on disk.</summary>
    public string PathOf(string name) => Path.Combine(_root, name);

    /// <inheritdoc/>
    public FileText Open(string name)
    {
        var path = PathOf(name);
        try
        {
            if (Directory.Exists(path))
            {
                return FileText.Unreadable(
                    Sentence.Of("sheet/unreadable-file.message.folder"),
                    Sentence.Of("sheet/unreadable-file.help.folder")
                );
            }

            var real = RealPath.Of(path);
            if (OrdinaryFile.InsteadOf(real) is { } other)
            {
                return FileText.Unreadable($"Here is {other} where a file should be.", "Put the file itself in its place.");
            }

            var length = new FileInfo(real).Length;
            return length > FileText.MostBytes ? FileText.TooLarge(length) : TextDecoder.Decode(File.ReadAllBytes(real));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return FileText.Unreadable(
                Sentence.Of("sheet/unreadable-file.message.opened"),
                Sentence.Of("sheet/unreadable-file.help.opened", ("error", e.GetType().Name))
            );
        }
    }

    /// <inheritdoc/>
    public PictureFile OpenPicture(string path)
    {
        try
        {
            var inside = PictureFile.StaysInside(path) ? Path.Combine(_root, path.Replace('\\', '/')) : null;
            if (
                inside is null
                || !RealPath.Of(inside).StartsWith(RealPath.Of(_root) + Path.DirectorySeparatorChar, StringComparison.Ordinal)
            )
            {
                return PictureFile.Outside;
            }

            if (!File.Exists(inside))
            {
                return PictureFile.Missing;
            }

            var real = RealPath.Of(inside);
            if (OrdinaryFile.InsteadOf(real) is { } other)
            {
                return PictureFile.NoFile(other);
            }

            var length = new FileInfo(real).Length;
            return length > PictureFile.MostBytes ? PictureFile.TooLarge(length) : PictureFile.Of(File.ReadAllBytes(real));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new PictureFile(
                [],
                Sentence.Of("sheet/bad-picture.value.opened"),
                Sentence.Of("sheet/unreadable-file.help.opened", ("error", e.GetType().Name))
            );
        }
    }

    IEnumerable<string> TopFiles() =>
        from kind in (string[])["production", "stock", "kit"]
        from name in (string[])[kind + ".yaml", kind + ".yml"]
        where Path.Exists(Path.Combine(_root, name))
        select name;

    ImmutableArray<string> RollFiles()
    {
        var folder = Path.Combine(_root, RollsFolder);
        if (!Directory.Exists(folder))
        {
            return [];
        }

        try
        {
            var names =
                from path in Directory.EnumerateFileSystemEntries(folder)
                where Path.GetExtension(path) is ".yaml" or ".yml"
                select RollsFolder + "/" + Path.GetFileName(path);
            return [.. names.Order(StringComparer.Ordinal)];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Opening a folder as if it were a file tells the user that its rolls are not in the papers.
            return [RollsFolder];
        }
    }
}
