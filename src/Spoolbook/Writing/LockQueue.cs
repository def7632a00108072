using System.Globalization;

namespace Spoolbook.Writing;

/// <summary>
/// A place in the line of those who wait for a folder's lock. It is an open file beside the lock, named after when its process came,
/// so that the system gives up the place of one that is killed; whoever comes behind it takes the file away.
/// </summary>
internal sealed class LockQueue : IDisposable
{
    const string Prefix = "turn-";

    readonly string _hidden;
    readonly string _name;
    readonly IFileWork _disk;
    FileStream? _file;

    LockQueue(string hidden, string name, IFileWork disk) => (_hidden, _name, _disk) = (hidden, name, disk);

    /// <summary>Whether there is a place in the line, be it of one who is gone.</summary>
    public static bool HasAny(string hidden) => Names(hidden).Count > 0;

    /// <summary>Goes to the end of the line.</summary>
    public static LockQueue Join(string hidden, IFileWork disk)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"{Prefix}{DateTime.UtcNow.Ticks:d19}-{Guid.NewGuid():N}");
        var place = new LockQueue(hidden, name, disk);
        place.Open();
        return place;
    }

    /// <summary>How many wait ahead of this one.</summary>
    public int Ahead()
    {
        // Whoever leaves last takes the folder away, and with it a place that was not yet open.
        if (_file is null || !File.Exists(_file.Name))
        {
            Open();
        }

        return Names(_hidden).Count(name => string.CompareOrdinal(name, _name) < 0 && IsThere(name));
    }

    /// <summary>Leaves the line.</summary>
    public void Dispose() => Leave(_file);

    void Open()
    {
        _file?.Dispose();
        try
        {
            _disk.MakeFolder(_hidden);
            _file = _disk.Lock(Path.Combine(_hidden, _name));
        }
        catch (DirectoryNotFoundException)
        {
            _file = null;
        }
    }

    bool IsThere(string name)
    {
        try
        {
            if (_disk.Lock(Path.Combine(_hidden, name)) is not { } abandoned)
            {
                return true;
            }

            Leave(abandoned);
        }
        catch (DirectoryNotFoundException)
        {
            // It left, and the folder with it.
        }

        return false;
    }

    void Leave(FileStream? file)
    {
        if (file is null)
        {
            return;
        }

        // Windows deletes no open file.
        file.Dispose();
        try
        {
            _disk.Delete(file.Name);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Whoever comes behind does it.
        }
    }

    static List<string> Names(string hidden)
    {
        try
        {
            return [.. Directory.EnumerateFiles(hidden, Prefix + "*").Select(path => Path.GetFileName(path)!)];
        }
        catch (DirectoryNotFoundException)
        {
            return [];
        }
    }
}
