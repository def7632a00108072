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
    const string Equal = " = ";

    static readonly ConcurrentDictionary<string, SentenceTexts?> _known = new(StringComparer.OrdinalIgnoreCase);

    // The whole file behind a line end, in UTF-8. A run says a few of its two thousand texts: each is looked for when it is said.
    readonly byte[] _file;
    readonly ConcurrentDictionary<string, string?> _said = new(StringComparer.Ordinal);

    SentenceTexts(byte[] file) => _file = file;

    /// <summary>English, built into the program; read with the first sentence.</summary>
    public static SentenceTexts English => Find("en")!;

    /// <summary>The words for a language, as in BCP 47; English where the program has none for it.</summary>
    public static SentenceTexts For(string language) => Find(language.Split('-')[0]) ?? English;

    /// <summary>The keys, in the order of the file, for comparing languages.</summary>
    public IEnumerable<string> Keys => KeysOf(Encoding.UTF8.GetString(_file));

    /// <summary>The words of a file. A key may be there only once.</summary>
    /// <exception cref="FormatException">A line has no equals sign between spaces, or a key is there twice.</exception>
    public static SentenceTexts Parse(string file)
    {
        var keys = new HashSet<string>(StringComparer.Ordinal);
        return KeysOf(file).FirstOrDefault(key => key.Length == 0 || !keys.Add(key)) is { } wrong
            ? throw new FormatException($"The words file has a line without a key of its own: '{wrong}'.")
            : new SentenceTexts(Encoding.UTF8.GetBytes('\n' + file));
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
        _said.GetOrAdd(key, Look) ?? throw new KeyNotFoundException($"The words of findings have no '{key}'.");

    string? Look(string key)
    {
        var start = Encoding.UTF8.GetBytes($"\n{key}{Equal}");
        var at = _file.AsSpan().IndexOf(start);
        if (at < 0)
        {
            return null;
        }

        var text = _file.AsSpan(at + start.Length);
        return Encoding.UTF8.GetString(text.IndexOf((byte)'\n') is >= 0 and var end ? text[..end] : text).Trim();
    }

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

        var bytes = new byte[file.Length + 1];
        bytes[0] = (byte)'\n';
        file.ReadExactly(bytes, 1, bytes.Length - 1);
        return new SentenceTexts(bytes);
    }

    // Of a line that is no remark and has no key, the key is nothing.
    static IEnumerable<string> KeysOf(string file) =>
        from line in file.Split('\n')
        where !string.IsNullOrWhiteSpace(line) && line[0] != '#'
        select line[..Math.Max(0, line.IndexOf(Equal, StringComparison.Ordinal))];
}
