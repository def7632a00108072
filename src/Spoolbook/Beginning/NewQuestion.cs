namespace Spoolbook.Beginning;

/// <summary>Something that is asked when a production begins, or given as an option.</summary>
/// <param name="Option">The option's name, without dashes.</param>
/// <param name="Prompt">What is asked.</param>
/// <param name="About">The option in a sentence, for its help.</param>
/// <param name="Take">The answers with one more.</param>
internal sealed record NewQuestion(string Option, string Prompt, string About, Func<NewAnswers, string, Answered<NewAnswers>> Take)
{
    /// <summary>What Enter answers; nothing where it leaves it out.</summary>
    public Func<NewAnswers, string> Usual { get; init; } = _ => "";

    /// <summary>Whether it is asked until nothing is answered.</summary>
    public bool IsList { get; init; }

    /// <summary>An answer to look at.</summary>
    public string Example { get; init; } = "";

    /// <summary>The key of an earlier production that answers it.</summary>
    public string Key { get; init; } = "";
}
