using System.Globalization;
using System.Text;
using Spoolbook.Digests;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Entry.Lines;

/// <summary>A line as the crew said it, and where.</summary>
/// <param name="File">The file it is in, or a name to show instead.</param>
/// <param name="Line">Its number there, from 1.</param>
public sealed record LineText(string File, int Line, string Text)
{
    public Place At(int start, int length) => new(File, Line, start + 1, length);

    /// <summary>The first four hexadecimal digits of the SHA-256 of a line without its number, blanks collapsed.</summary>
    public static string DigestOf(string text)
    {
        var collapsed = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        var digest = Sha256.Of(Encoding.UTF8.GetBytes(collapsed));
        return string.Create(CultureInfo.InvariantCulture, $"{digest[0]:x2}{digest[1]:x2}");
    }
}
