using System.Collections.Immutable;

namespace Spoolbook.Reading.Forms;

/// <summary>A value in a JSON Schema: its types, a pattern for text, bounds for numbers, words to choose from.</summary>
sealed record FormJson(ImmutableArray<string> Types, string? Pattern = null, ImmutableArray<string> Words = default)
{
    public static FormJson AnyText { get; } = new(["string", "number", "boolean"]);

    /// <summary>The name of the form, where <see cref="Form.What"/> is shared with another.</summary>
    public string? Name { get; init; }

    public decimal? Least { get; init; }

    /// <summary>Whether <see cref="Least"/> itself is allowed.</summary>
    public bool LeastItself { get; init; } = true;

    public decimal? Most { get; init; }

    public static FormJson Whole(int least, int most, string pattern) => new(["integer", "string"], pattern) { Least = least, Most = most };

    public static FormJson Number(string pattern) => new(["number", "string"], pattern);

    public static FormJson Text(string pattern) => new(["string"], pattern);

    /// <summary>Words to choose from, in small or capital letters; yes and no also as YAML's own.</summary>
    public static FormJson Choice(IReadOnlyCollection<string> words, IReadOnlyCollection<string> readToo)
    {
        var anyCase = string.Join(
            '|',
            words
                .Concat(readToo)
                .Select(w => string.Concat(w.Select(c => char.IsAsciiLetter(c) ? $"[{char.ToUpperInvariant(c)}{c}]" : $"{c}")))
        );
        return new FormJson(words.Contains("true") ? ["boolean", "string"] : ["string"], $"^({anyCase})$", [.. words])
        {
            Name = string.Join("-or-", words),
        };
    }
}
