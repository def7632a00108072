namespace Spoolbook.Writing;

/// <summary>The few things that Spoolbook does to files, one by one: a test fails or kills each of them in turn.</summary>
internal interface IFileWork
{
    /// <summary>Opens a file that no other process has open so, or gives null where one has. The system closes it at a kill.</summary>
    FileStream? Lock(string path);

    /// <summary>Makes a folder, if it is not there.</summary>
    void MakeFolder(string path);

    /// <summary>Makes a file that was not there, with the rights of another one if there is one. No link is followed.</summary>
    FileStream Create(string path, string like);

    /// <summary>Makes a link that was not there.</summary>
    void Link(string path, string target);

    void Write(FileStream file, ReadOnlySpan<byte> bytes);

    /// <summary>Sees to it that what was written to these files is on the disk and not only on its way there.</summary>
    void Flush(IReadOnlyList<FileStream> files);

    /// <summary>Puts a file in the place of another in one step. A link of that name is replaced, not followed.</summary>
    void Rename(string from, string to);

    /// <summary>Deletes a file or a link, if it is there.</summary>
    void Delete(string path);

    /// <summary>Deletes a folder with nothing in it.</summary>
    void DeleteFolder(string path);

    /// <summary>Sees to it that the names in a folder are on the disk.</summary>
    void SyncFolder(string path);
}
