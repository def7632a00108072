using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Findings;

/// <summary>A related place of a finding.</summary>
/// <param name="Description">How it is related, in a few words.</param>
public sealed record Related(Place Place, Sentence Description)
{
    /// <summary>The few words in English.</summary>
    public string Message => Description.ToString();
}
