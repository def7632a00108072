namespace Spoolbook.Shoot.Findings;

/// <summary>A figure behind a finding: <c>loaded</c>, <c>100+00</c>.</summary>
/// <param name="Called">Its name.</param>
/// <param name="Written">The figure, as text.</param>
public sealed record Figure(Sentence Called, SentenceValue Written)
{
    /// <summary>Its name, in English.</summary>
    public string Name => Called.ToString();

    /// <summary>The figure, as text in English.</summary>
    public string Value => Written.Sentence.ToString();
}
