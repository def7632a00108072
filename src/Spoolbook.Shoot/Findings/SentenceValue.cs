using System.Globalization;

namespace Spoolbook.Shoot.Findings;

/// <summary>
/// What fills a place in a sentence, or is a figure: another sentence, or a name, a number, what somebody wrote on set,
/// which are the same in every language. Nothing turns a bare text into a <see cref="Findings.Sentence"/> itself, so that no
/// finding has a message that is in no words file.
/// </summary>
/// <param name="Sentence">The value, as a sentence.</param>
public readonly record struct SentenceValue(Sentence Sentence)
{
    /// <summary>A sentence within another.</summary>
    public static implicit operator SentenceValue(Sentence sentence) => new(sentence);

    /// <summary>A text that is the same in every language.</summary>
    public static implicit operator SentenceValue(string text) => new(Sentence.Plain(text));

    /// <summary>A whole number, the same in every language.</summary>
    public static implicit operator SentenceValue(int number) => new(Sentence.Plain(number.ToString(CultureInfo.InvariantCulture)));
}
