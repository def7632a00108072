using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Forms;

/// <summary>How one kind of value is written.</summary>
/// <param name="Check">The check that speaks where it is written wrongly.</param>
/// <param name="What">What it is, after "is not": <c>a length of film</c>.</param>
/// <param name="Help">How to write it.</param>
/// <param name="Json">What a JSON Schema says of it.</param>
abstract record Form(string Check, Sentence What, Sentence Help, FormJson Json);

/// <summary>A kind of value with its parser.</summary>
sealed record Form<T>(string Check, Sentence What, Sentence Help, FormJson Json, Parser<T> Parser) : Form(Check, What, Help, Json)
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
    /// <remarks>Film says it, which may see nobody and so has no words file: it passes through in English.</remarks>
    (Sentence Message, Sentence Help) Report(string text, string objection)
    {
        var opening = $"'{text}' ";
        var colon = objection.LastIndexOf(": ", StringComparison.Ordinal);
        if (!objection.StartsWith(opening, StringComparison.Ordinal) || colon < opening.Length)
        {
            return (Sentence.Of("common.form.message", ("text", Quote.Short(text)), ("what", What)), Help);
        }

        return (
            Sentence.Of("common.form.message.objection", ("text", Quote.Short(text)), ("objection", objection[opening.Length..colon])),
            Sentence.Of("common.form.help.objection", ("advice", objection[(colon + 2)..]))
        );
    }
}
