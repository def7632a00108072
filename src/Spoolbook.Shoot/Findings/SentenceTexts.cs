using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Text;

namespace Spoolbook.Shoot.Findings;

/// <summary>
/// The words of findings in one language, read from lines of <c>key = text with {value}</c>. A brace without a name in
/// it, as in a line of YAML, is just a brace.
/// </summary>
public sealed class SentenceTexts
{
    static readonly ConcurrentDictionary<string, SentenceTexts?> _known = new(StringComparer.OrdinalIgnoreCase);

    readonly Dictionary<string, string> _texts;

    SentenceTexts(Dictionary<string, string> texts) => _texts = texts;

    /// <summary>English, built into the program; read with the first sentence.</summary>
    public static SentenceTexts English => Find("en")!;

    /// <summary>The words for a language, as in BCP 47; English where the program has none for it.</summary>
    public static SentenceTexts For(string language) => Find(language.Split('-')[0]) ?? English;

    /// <summary>The keys, in the order of the file, for comparing languages.</summary>
    public IEnumerable<string> Keys => _texts.Keys;

    /// <summary>The words of a file. A key may be there only once.</summary>
    /// <exception cref="FormatException">A line has no equals sign, or a key is there twice.</exception>
    public static SentenceTexts Parse(string file)
    {
        var texts = new Dictionary<string, string>(1024, StringComparer.Ordinal);
        foreach (var line in file.AsSpan().EnumerateLines())
        {
            if (line.IsWhiteSpace() || line[0] == '#')
            {
                continue;
            }

            var equals = line.IndexOf('=');
            if (equals < 0 || !texts.TryAdd(line[..equals].Trim().ToString(), line[(equals + 1)..].Trim().ToString()))
            {
                throw new FormatException($"The words file has a line without a key of its own: {line}");
            }
        }

        return new SentenceTexts(texts);
    }

    /// <summary>The names of the values in the text of a key.</summary>
    /// <exception cref="KeyNotFoundException">There is no such key.</exception>
    public IEnumerable<string> ValuesOf(string key)
    {
        var text = TextOf(key);
        for (var at = text.IndexOf('{', StringComparison.Ordinal); at >= 0; at = text.IndexOf('{', at + 1))
        {
            if (NameAt(text, at) is { } name)
            {
                yield return Small(name);
            }
        }
    }

    internal string Fill(string key, ImmutableArray<(string Name, Sentence Value)> values)
    {
        // In one pass, so that braces in a value, which come from a user's text, are never filled in.
        var text = TextOf(key);
        var filled = new StringBuilder(text.Length + 32);
        for (var at = 0; at < text.Length;)
        {
            if (text[at] == '{' && NameAt(text, at) is { } name)
            {
                var value = Value(key, Small(name), values).In(this);
                filled.Append(char.IsAsciiLetterUpper(name[0]) ? Capital(value) : value);
                at += name.Length + 2;
            }
            else
            {
                filled.Append(text[at++]);
            }
        }

        return filled.ToString();
    }

    internal string TextOf(string key) =>
        _texts.TryGetValue(key, out var text) ? text : throw new KeyNotFoundException($"The words of findings have no '{key}'.");

    static Sentence Value(string key, string name, ImmutableArray<(string Name, Sentence Value)> values)
    {
        foreach (var (known, value) in values)
        {
            if (known == name)
            {
                return value;
            }
        }

        throw new KeyNotFoundException($"'{key}' names a value '{name}', and there is none.");
    }

    static string Small(string name) => char.ToLowerInvariant(name[0]) + name[1..];

    static string Capital(string value) => value.Length == 0 ? value : char.ToUpperInvariant(value[0]) + value[1..];

    static string? NameAt(string text, int brace)
    {
        var end = brace + 1;
        while (end < text.Length && IsOfName(text[end], isFirst: end == brace + 1))
        {
            end++;
        }

        return end < text.Length && text[end] == '}' && end > brace + 1 ? text[(brace + 1)..end] : null;
    }

    static bool IsOfName(char letter, bool isFirst) =>
        char.IsAsciiLetterLower(letter) || letter == '-' || (isFirst && char.IsAsciiLetterUpper(letter));

    static SentenceTexts? Find(string language) => _known.GetOrAdd(language, Read);

    static SentenceTexts? Read(string language)
    {
        using var file = typeof(SentenceTexts).Assembly.GetManifestResourceStream($"findings.{language.ToLowerInvariant()}.txt");
        if (file is null)
        {
            return null;
        }

        using var reader = new StreamReader(file);
        return Parse(reader.ReadToEnd());
    }
}
