using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Files;

/// <summary>Where the school's file of a production is.</summary>
/// <param name="Name">Its path from the production's folder: <c>../../school.yaml</c>.</param>
/// <param name="Production">The production's path from the school's folder: <c>first-year/ferry</c>.</param>
public sealed record SchoolPlace(string Name, string Production)
{
    // A school's folder is not far above its productions.
    const int MostFoldersUp = 16;

    /// <summary>Whether a folder is a school's and no production's.</summary>
    public static bool IsSchool(string folder) =>
        !FolderFiles.HoldsProduction(folder) && File.Exists(Path.Combine(folder, Department.FileName));

    /// <summary>The nearest one above a production; null where there is none.</summary>
    /// <param name="production">The production's folder.</param>
    /// <param name="file">The production's one file, where it has only that; the school's may be beside it.</param>
    public static SchoolPlace? Above(string production, string? file = null)
    {
        var from = Path.GetFullPath(production);
        var (up, at) = file is null ? ("../", Path.GetDirectoryName(from)) : ("", from);
        for (var steps = 0; steps < MostFoldersUp && at is not null; steps++)
        {
            if (IsSchool(at))
            {
                var path = Path.GetRelativePath(at, file is null ? from : Path.Combine(from, Path.GetFileNameWithoutExtension(file)));
                return new SchoolPlace(up + Department.FileName, path.Replace(Path.DirectorySeparatorChar, '/'));
            }

            (up, at) = (up + "../", Path.GetDirectoryName(at));
        }

        return null;
    }
}
