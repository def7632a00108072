using System.Collections.Immutable;

namespace Spoolbook.Reading.Files;

/// <summary>The files that a production is written in, wherever they lie.</summary>
public interface IProductionFiles
{
    /// <summary>Whether everything is in one file, rolls and all.</summary>
    bool IsOneFile { get; }

    /// <summary>The files that belong to the production, as paths from its folder with forward slashes.</summary>
    ImmutableArray<string> Names { get; }

    /// <summary>What lies beside them and is not read.</summary>
    ImmutableArray<PassedFile> PassedOver => [];

    /// <summary>The ledger of the papers that were made last, where they lie with the production; null where there is none.</summary>
    string? Ledger => null;

    /// <summary>What a file of <see cref="Names"/> says, or why it cannot be read.</summary>
    FileText Open(string name);

    /// <summary>A picture by its path from the folder, or why it cannot be used; never one outside.</summary>
    PictureFile OpenPicture(string path);
}
