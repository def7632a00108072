namespace Spoolbook.Shoot.Findings;

/// <summary>A figure behind a finding: <c>loaded</c>, <c>100+00</c>.</summary>
/// <param name="Called">What it is called.</param>
/// <param name="Written">The figure, written out.</param>
public sealed record Figure(Sentence Called, SentenceValue Written)
{
    /// <summary>What it is called, in English.</summary>
    public string Name => Called.ToString();

    /// <summary>The figure, written out in English.</summary>
    public string Value => Written.Sentence.ToString();
}
