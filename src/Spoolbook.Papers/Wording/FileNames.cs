using System.Globalization;

namespace Spoolbook.Papers.Wording;

/// <summary>Names from set, as parts of file names.</summary>
internal static class FileNames
{
    // A roll may have any name; a file may not.
    public static string Safe(string name)
    {
        var safe = string.Concat(name.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' ? c : '-')).Trim('-');
        if (safe == name)
        {
            return name;
        }

        // Two names that come out the same must not share a file.
        var hash = name.Aggregate(17u, (sum, c) => unchecked((sum * 31) + c));
        return string.Create(CultureInfo.InvariantCulture, $"{safe}-{hash:x8}");
    }
}
