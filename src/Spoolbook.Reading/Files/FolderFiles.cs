using System.Collections.Immutable;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Files;

/// <summary>A production folder on disk, or one file that holds everything.</summary>
public sealed class FolderFiles : IProductionFiles
{
    // The ledger of forty rolls takes half a megabyte.
    const int MostLedger = 20_000_000;

    readonly string _root;

    /// <param name="path">The folder or file; it need not exist.</param>
    public FolderFiles(string path)
    {
        IsOneFile = File.Exists(path);
        var folder = IsOneFile ? Path.GetDirectoryName(Path.GetFullPath(path)) : path;
        _root = folder ?? path;
        Names = IsOneFile ? [Path.GetFileName(path)] : [.. TopFiles(), .. RollFiles()];
        School = SchoolPlace.Above(_root, IsOneFile ? Path.GetFileName(path) : null);
    }

    /// <inheritdoc/>
    public bool IsOneFile { get; }

    /// <inheritdoc/>
    public ImmutableArray<string> Names { get; }

    /// <inheritdoc/>
    public SchoolPlace? School { get; }

    /// <inheritdoc/>
    public ImmutableArray<PassedFile> PassedOver => IsOneFile ? [] : PassedFiles.Find(_root, Names);

    /// <inheritdoc/>
    public byte[]? Ledger
    {
        get
        {
            try
            {
                var ledger = new FileInfo(PathOf(SheetNames.Ledger));
                return !IsOneFile && ledger is { Exists: true, Length: > 0 and <= MostLedger } ? File.ReadAllBytes(ledger.FullName) : null;
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                return null;
            }
        }
    }

    /// <summary>Whether a folder is a production's: it holds a <c>production.yaml</c>, with either ending, in any case.</summary>
    public static bool HoldsProduction(string folder) =>
        ((string[])["production.yaml", "production.yml", "PRODUCTION.YAML", "PRODUCTION.YML"]).Any(name =>
            File.Exists(Path.Combine(folder, name))
        );

    /// <summary>Where a file of <see cref="Names"/> is on disk.</summary>
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
                return FileText.Unreadable(
                    Sentence.Of("sheet/unreadable-file.message.no-file", ("what", other)),
                    Sentence.Of("sheet/unreadable-file.help.no-file")
                );
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
    public PictureFile OpenPicture(string path) => OpenPicture(_root, path);

    /// <inheritdoc/>
    public PictureFile OpenSchoolPicture(string path) =>
        School is { } school ? OpenPicture(Path.GetDirectoryName(Path.GetFullPath(PathOf(school.Name)))!, path) : PictureFile.Missing;

    static PictureFile OpenPicture(string root, string path)
    {
        try
        {
            var inside = PictureFile.StaysInside(path) ? Path.Combine(root, path.Replace('\\', '/')) : null;
            if (
                inside is null
                || !RealPath.Of(inside).StartsWith(RealPath.Of(root) + Path.DirectorySeparatorChar, StringComparison.Ordinal)
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

    IEnumerable<string> TopFiles()
    {
        var sheets = SheetsIn(_root);
        return SheetNames.Kinds.Select(kind => OfKind(kind, sheets)).OfType<string>();
    }

    /// <summary>The file of a kind; of several, the one with the right name.</summary>
    static string? OfKind(string kind, string[] sheets)
    {
        var right = kind + ".yaml";
        return sheets.Contains(right)
            ? right
            : sheets
                .Where(name => string.Equals(Path.GetFileNameWithoutExtension(name), kind, StringComparison.OrdinalIgnoreCase))
                .Max(StringComparer.Ordinal);
    }

    static string[] SheetsIn(string folder)
    {
        try
        {
            return [.. Directory.EnumerateFileSystemEntries(folder).Select(path => Path.GetFileName(path)).Where(SheetNames.EndsAsSheet)];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // A folder that cannot be listed may still open a file by its name.
            return [.. SheetNames.Kinds.Select(kind => kind + ".yaml").Where(name => Path.Exists(Path.Combine(folder, name)))];
        }
    }

    ImmutableArray<string> RollFiles()
    {
        var folder = Path.Combine(_root, SheetNames.Rolls);
        if (!Directory.Exists(folder))
        {
            return [];
        }

        try
        {
            var names =
                from path in Directory.EnumerateFileSystemEntries(folder)
                where SheetNames.EndsAsSheet(path)
                select SheetNames.Rolls + "/" + Path.GetFileName(path);
            return [.. names.Order(StringComparer.Ordinal)];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Opening the folder as a file then fails, with the finding that its rolls are missing from the papers.
            return [SheetNames.Rolls];
        }
    }
}
