using System.Text;

namespace Spoolbook.Reading.Editing;

/// <summary>The comment in the first line of a file that points an editor to its schema.</summary>
public static class SchemaLine
{
    const string Word = "yaml-language-server:";

    // An editor looks for it among the first comments.
    const int MostLines = 10;

    static readonly byte[] _mark = [0xEF, 0xBB, 0xBF];

    /// <summary>The line, without a line end.</summary>
    public static string Of(string schema) => $"# {Word} $schema={schema}";

    /// <summary>A file's bytes with the line before them; null where it has such a line, or is not UTF-8.</summary>
    /// <param name="schema">The path of the schema, from the file.</param>
    public static byte[]? Before(byte[] file, string schema)
    {
        var start = file.AsSpan().StartsWith(_mark) ? _mark.Length : 0;
        string text;
        try
        {
            text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(file, start, file.Length - start);
        }
        catch (DecoderFallbackException)
        {
            return null;
        }

        // A file with nothing in it, or in an encoding of two bytes a letter, stays as it is.
        if (text.Length == 0 || text.Contains('\0') || text.Split('\n').Take(MostLines).Any(IsOne))
        {
            return null;
        }

        var end = text.IndexOf('\n', StringComparison.Ordinal) is > 0 and var at && text[at - 1] == '\r' ? "\r\n" : "\n";
        return [.. file[..start], .. Encoding.UTF8.GetBytes(Of(schema) + end), .. file[start..]];
    }

    static bool IsOne(string line) => line.StartsWith('#') && line.Contains(Word, StringComparison.Ordinal);
}
