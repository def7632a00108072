using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Forms;

/// <summary>How one kind of value is written.</summary>
/// <param name="Check">The check that speaks where it is written wrongly.</param>
/// <param name="What">What it is, after "is not": <c>a length of film</c>.</param>
/// <param name="Help">How to write it.</param>
/// <param name="Json">What a JSON Schema says of it.</param>
abstract record Form(string Check, string What, string Help, FormJson Json);

/// <summary>A kind of value with its parser.</summary>
sealed record Form<T>(string Check, string What, string Help, FormJson Json, Parser<T> Parser) : Form(Check, What, Help, Json)
{
    /// <summary>What the trade's own reading of the text says against it, where it has more to say than that it does not fit.</summary>
    public Func<string, ReadingContext, string>? Objection { get; init; }

    /// <summary>The value that a piece of text writes; null, with a finding, where it writes none.</summary>
    public Located<T>? Read(string text, Place place, ReadingContext context)
    {
        if (Parser(text, context, out var value))
        {
            return new Located<T>(value, place);
        }

        var (message, help) = Report(text, Objection?.Invoke(text, context) ?? "");
        context.Findings.Add(Check, message, place, help);
        return null;
    }

    /// <summary>An objection, <c>'31,3ft' has a comma: write a point</c>, as a sentence and what to do.</summary>
    (string Message, string Help) Report(string text, string objection)
    {
        var opening = $"'{text}' ";
        var colon = objection.LastIndexOf(": ", StringComparison.Ordinal);
        if (!objection.StartsWith(opening, StringComparison.Ordinal) || colon < opening.Length)
        {
            return ($"`{Quote.Short(text)}` is not {What}.", Help);
        }

        var advice = objection[(colon + 2)..];
        return ($"`{Quote.Short(text)}` {objection[opening.Length..colon]}.", $"{char.ToUpperInvariant(advice[0])}{advice[1..]}.");
    }
}

/// <summary>Text to a value; false where the text does not write one. Never throws, whatever the text.</summary>
delegate bool Parser<T>(string text, ReadingContext context, out T value);

/// <summary>What a JSON Schema says of a value: its types with a pattern for text and bounds for numbers, and words to choose from.</summary>
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
        var anyCase = string.Join('|', words.Concat(readToo).Select(w => string.Concat(w.Select(c => char.IsAsciiLetter(c) ? $"[{char.ToUpperInvariant(c)}{c}]" : $"{c}"))));
        return new FormJson(words.Contains("true") ? ["boolean", "string"] : ["string"], $"^({anyCase})$", [.. words]) { Name = string.Join("-or-", words) };
    }
}
