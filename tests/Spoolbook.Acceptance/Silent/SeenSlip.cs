namespace Spoolbook.Acceptance.Silent;

/// <summary>A slip, and who noticed it.</summary>
/// <param name="By">The finding, or what was not looked at; empty where nobody noticed.</param>
sealed record SeenSlip(string Key, string Slip, Outcome Outcome, string By)
{
    /// <summary>Whether the figures and the takes are what they were.</summary>
    public bool IsSame { get; init; }

    /// <summary>Where it was made, before and after.</summary>
    public string Described { get; init; } = "";
}
