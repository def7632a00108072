namespace Spoolbook.Papers.Wording;

/// <summary>What a finding says to do, for a reader who may never see the file.</summary>
/// <param name="ToDo">The sentences without a line of the file; empty if there are none.</param>
/// <param name="InFile">The sentences with one.</param>
readonly record struct Advice(string ToDo, string InFile)
{
    /// <summary>A finding's help, split.</summary>
    public static Advice Of(string help)
    {
        var sentences = Sentences(help).ToLookup(HasLineOfFile);
        return new Advice(string.Join(' ', sentences[false]), string.Join(' ', sentences[true]));
    }

    // A full stop within quotes ends nothing.
    static IEnumerable<string> Sentences(string text)
    {
        var (start, quoted) = (0, false);
        for (var i = 0; i < text.Length; i++)
        {
            quoted ^= text[i] == '`';
            if (!quoted && text[i] is '.' or '?' or '!' && i + 2 < text.Length && text[i + 1] == ' ' && !char.IsLower(text[i + 2]))
            {
                yield return text[start..(i + 1)];
                start = i + 2;
            }
        }

        if (start < text.Length)
        {
            yield return text[start..];
        }
    }

    // A quoted word, as a mark, is no line of the file; a key or a list is.
    static bool HasLineOfFile(string sentence) =>
        sentence.Split('`').Where((_, i) => i % 2 == 1).Any(quoted => quoted.AsSpan().ContainsAny(":{[") || quoted.StartsWith("- ", StringComparison.Ordinal));
}
