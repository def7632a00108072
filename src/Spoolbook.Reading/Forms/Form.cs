using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Forms;

/// <summary>How one kind of value is written.</summary>
/// <param name="Check">The check that reports a value written wrongly.</param>
/// <param name="What">What it is, after "is not": <c>a length of film</c>.</param>
abstract record Form(string Check, Sentence What, Sentence Help, FormJson Json)
{
    /// <summary>Whether a text is such a value; if not, the findings say why.</summary>
    public abstract bool Fits(string text, Place place, ReadingContext context);
}

sealed record Form<T>(string Check, Sentence What, Sentence Help, FormJson Json, Parser<T> Parser) : Form(Check, What, Help, Json)
{
    const int MostOffered = 2;

    /// <summary>What Film objects to in a text, where it knows more than that the text does not fit.</summary>
    public Func<string, ReadingContext, Slip?>? Objection { get; init; }

    /// <summary>What a text that does not fit was probably meant to be, the likeliest first. A guess may not fit either.</summary>
    public Func<string, ReadingContext, IEnumerable<string>>? Rewrites { get; init; }

    /// <summary>The box of a paper sheet whose value it is, where a message would not be plain without its name.</summary>
    public Sentence? Box { get; init; }

    public override bool Fits(string text, Place place, ReadingContext context) => Read(text, place, context) is not null;

    /// <summary>The value of a text; null, with a finding, where it is none.</summary>
    public Located<T>? Read(string text, Place place, ReadingContext context)
    {
        if (Parser(text, context, out var value))
        {
            return new Located<T>(value, place);
        }

        var (message, help) = Report(text, Objection?.Invoke(text, context));
        message = Box is null ? message : Sentence.Of("common.form.message.box", ("box", Box), ("message", message));
        context.Findings.Add(Check, message, place, Instead(text, context) ?? help);
        return null;
    }

    /// <summary>The value to write instead; null without a good guess.</summary>
    Sentence? Instead(string text, ReadingContext context) =>
        (Rewrites?.Invoke(text, context) ?? [])
            .Where(written => Parser(written, context, out _))
            .Distinct(StringComparer.Ordinal)
            .Take(MostOffered)
            .Select(written => Sentence.Plain($"`{written}`"))
            .ToArray()
            is { Length: > 0 } written
            ? Sentence.Of(
                "common.form.help.rewritten",
                ("written", written.Aggregate((one, other) => Sentence.Of("list.or", ("before", one), ("last", other))))
            )
            : null;

    // What nobody wrote is not objected to: the form's own help says what is wanted.
    (Sentence Message, Sentence Help) Report(string text, Slip? slip) =>
        slip is not null && SlipSentences.Of(slip) is { Text.Length: > 0 } said
            ? (
                Sentence.Of("common.form.message.objection", ("text", Quote.Short(text)), ("objection", said.Objection)),
                Sentence.Of("common.form.help.objection", ("advice", said.Advice))
            )
            : (Sentence.Of("common.form.message", ("text", Quote.Short(text)), ("what", What)), Help);
}
