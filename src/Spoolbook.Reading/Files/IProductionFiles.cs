using System.Collections.Immutable;

namespace Spoolbook.Reading.Files;

/// <summary>The files of a production, on disk or not.</summary>
public interface IProductionFiles
{
    /// <summary>Whether one file holds everything, rolls and all.</summary>
    bool IsOneFile { get; }

    /// <summary>The files that are read, as paths from the production's folder with forward slashes.</summary>
    ImmutableArray<string> Names { get; }

    /// <summary>The files beside them that are not read.</summary>
    ImmutableArray<PassedFile> PassedOver => [];

    /// <summary>The ledger of the last papers, where they are in the production's folder; null where there is none.</summary>
    byte[]? Ledger => null;

    /// <summary>The school's file above the production; null where there is none.</summary>
    SchoolPlace? School => null;

    /// <summary>The text of a file of <see cref="Names"/>, or of the school's file, or why it cannot be read.</summary>
    FileText Open(string name);

    /// <summary>A picture by its path from the folder, or why it cannot be used; never one outside the folder.</summary>
    PictureFile OpenPicture(string path);

    /// <summary>A picture by its path from the school's folder, or why it cannot be used; never one outside that folder.</summary>
    PictureFile OpenSchoolPicture(string path) => PictureFile.Missing;
}
