using System.Collections.Immutable;
using System.Text;

namespace Spoolbook.Papers.Wording;

/// <summary>
/// The words of the papers in one language, read from <c>words.LANGUAGE.txt</c> beside the templates: lines of
/// <c>key = text</c>. Templates see a key with its hyphens as underscores.
/// </summary>
public sealed class Translations
{
    readonly ImmutableDictionary<string, string> _words;

    Translations(ImmutableDictionary<string, string> words) => _words = words;

    /// <summary>The words by key, as templates write them; keys with a dot are the workbook's.</summary>
    public IReadOnlyDictionary<string, string> ForTemplates =>
        _words.Where(w => !w.Key.Contains('.', StringComparison.Ordinal)).ToImmutableDictionary(w => w.Key.Replace('-', '_'), w => w.Value);

    /// <summary>The keys, for comparing languages.</summary>
    public IEnumerable<string> Keys => _words.Keys.Order(StringComparer.Ordinal);

    /// <summary>Whether there is a text for a key.</summary>
    public bool Has(string key) => _words.ContainsKey(key);

    /// <summary>The text for a key.</summary>
    /// <exception cref="MissingWordException">The file lacks it.</exception>
    public string this[string key] => _words.TryGetValue(key, out var text) ? text : throw new MissingWordException(key);

    /// <summary>The text for a key with its <c>{names}</c> filled in.</summary>
    public string Fill(string key, params ReadOnlySpan<(string Name, string Value)> values)
    {
        // In one pass, so that braces in a value, which come from a user's text, are never filled in.
        var filled = new StringBuilder();
        var text = this[key];
        for (var at = 0; at < text.Length;)
        {
            var end = text[at] == '{' ? text.IndexOf('}', at) : -1;
            var name = end < 0 ? "" : text[(at + 1)..end];
            var value = Value(name, values);
            filled.Append(value ?? text[at..(at + 1)]);
            at = value is null ? at + 1 : end + 1;
        }

        return filled.ToString();
    }

    static string? Value(string name, ReadOnlySpan<(string Name, string Value)> values)
    {
        foreach (var (known, value) in values)
        {
            if (known == name)
            {
                return value;
            }
        }

        return null;
    }

    /// <summary>The words of files; a later file overrides an earlier one.</summary>
    public static Translations Parse(params ReadOnlySpan<string> files)
    {
        var words = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var file in files)
        {
            foreach (var line in file.Split('\n'))
            {
                var equals = line.IndexOf('=', StringComparison.Ordinal);
                if (equals > 0 && !line.TrimStart().StartsWith('#'))
                {
                    words[line[..equals].Trim()] = line[(equals + 1)..].Trim();
                }
            }
        }

        return new Translations(words.ToImmutable());
    }
}
