using System.Globalization;

namespace Spoolbook.Papers.Wording;

/// <summary>What is called anything on set, as a part of a file's name.</summary>
internal static class FileNames
{
    // A roll may be called anything; a file may not.
    public static string Safe(string name)
    {
        var safe = string.Concat(name.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' ? c : '-')).Trim('-');
        if (safe == name)
        {
            return name;
        }

        // Two names that come out alike must not share a file.
        var hash = name.Aggregate(17u, (sum, c) => unchecked((sum * 31) + c));
        return string.Create(CultureInfo.InvariantCulture, $"{safe}-{hash:x8}");
    }
}
