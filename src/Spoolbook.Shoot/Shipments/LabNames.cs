namespace Spoolbook.Shoot.Shipments;

/// <summary>Names as people write them, compared without what they vary: case, blanks and signs.</summary>
public static class LabNames
{
    /// <summary>The letters and digits of a name, in small letters.</summary>
    public static string Plain(string name) => string.Concat(name.Where(char.IsLetterOrDigit)).ToLowerInvariant();

    /// <summary>A name as part of a folder's: plain small letters and digits, words joined by hyphens.</summary>
    public static string InFolder(string name)
    {
        var words = name.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : ' ');
        var joined = string.Join('-', string.Concat(words).Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return joined.Length == 0 ? "lab" : joined[..Math.Min(joined.Length, Longest)].Trim('-');
    }

    // With the day before it and a file's name behind it, it fits every file system.
    const int Longest = 60;
}
