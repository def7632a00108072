namespace Spoolbook.Papers.Pages;

/// <summary>One element of the vocabulary. VOCABULARY.md has an example of each.</summary>
sealed record ElementRule(string Name, Holds Holds)
{
    public IReadOnlyList<string> Classes { get; init; } = [];

    public IReadOnlyList<string> Attributes { get; init; } = [];

    /// <summary>The elements allowed inside, where only named ones are.</summary>
    public IReadOnlyList<string> Children { get; init; } = [];
}
