using System.Collections.Immutable;

namespace Spoolbook.Reading.Forms;

/// <summary>
/// What a JSON Schema says of a value: its types with a pattern for text and bounds for numbers, and words to choose from.
/// </summary>
sealed record FormJson(ImmutableArray<string> Types, string? Pattern = null, ImmutableArray<string> Words = default)
{
    public static FormJson AnyText { get; } = new(["string", "number", "boolean"]);

    /// <summary>What the form is called, where <see cref="Form.What"/> does not tell it from others.</summary>
    public string? Name { get; init; }

    /// <summary>The least that a number can be.</summary>
    public decimal? Least { get; init; }

    /// <summary>Whether a number can be <see cref="Least"/> itself.</summary>
    public bool LeastItself { get; init; } = true;

    /// <summary>The most that a number can be.</summary>
    public decimal? Most { get; init; }

    public static FormJson Whole(int least, int most, string pattern) => new(["integer", "string"], pattern) { Least = least, Most = most };

    public static FormJson Number(string pattern) => new(["number", "string"], pattern);

    public static FormJson Text(string pattern) => new(["string"], pattern);

    /// <summary>Words to choose from, in small or capital letters; those of yes and no also as YAML's own.</summary>
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
