using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Findings;

/// <summary>Another place that belongs to a finding.</summary>
/// <param name="Description">What it has to do with it, in a few words.</param>
public sealed record Related(Place Place, Sentence Description)
{
    /// <summary>The few words in English.</summary>
    public string Message => Description.ToString();
}
