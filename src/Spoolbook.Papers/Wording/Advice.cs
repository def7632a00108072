using System.Collections.Immutable;

namespace Spoolbook.Papers.Wording;

/// <summary>What a finding says to do, for a reader who may never see the file.</summary>
/// <param name="ToDo">The sentences without a line of the file; empty if there are none.</param>
/// <param name="InFile">The sentences with one.</param>
readonly record struct Advice(string ToDo, string InFile)
{
    // It follows what to write in the file, which is moved away.
    static readonly ImmutableArray<string> _otherwise = ["If not, ", "Wenn nicht, "];

    /// <summary>A finding's help, split.</summary>
    public static Advice Of(string help)
    {
        var (toDo, inFile) = (new List<string>(), new List<string>());
        var afterFile = false;
        foreach (var sentence in Sentences(help))
        {
            var isOfFile = HasLineOfFile(sentence);
            (isOfFile ? inFile : toDo).Add(afterFile && !isOfFile ? WithoutOtherwise(sentence) : sentence);
            afterFile = isOfFile;
        }

        return new Advice(string.Join(' ', toDo), string.Join(' ', inFile));
    }

    static string WithoutOtherwise(string sentence) =>
        _otherwise.FirstOrDefault(o => sentence.StartsWith(o, StringComparison.Ordinal)) is { } otherwise
            ? char.ToUpperInvariant(sentence[otherwise.Length]) + sentence[(otherwise.Length + 1)..]
            : sentence;

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
        sentence
            .Split('`')
            .Where((_, i) => i % 2 == 1)
            .Any(quoted => quoted.AsSpan().ContainsAny(":{[") || quoted.StartsWith("- ", StringComparison.Ordinal));
}
