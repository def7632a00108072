namespace Spoolbook.Shoot.Findings;

/// <summary>A figure behind a finding: <c>loaded</c>, <c>100+00</c>.</summary>
/// <param name="Called">What it is called.</param>
/// <param name="Description">The figure, written out.</param>
public sealed record Figure(Sentence Called, Sentence Description)
{
    /// <summary>What it is called, in English.</summary>
    public string Name => Called.ToString();

    /// <summary>The figure, written out in English.</summary>
    public string Value => Description.ToString();
}
