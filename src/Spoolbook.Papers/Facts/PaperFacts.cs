namespace Spoolbook.Papers.Facts;

/// <summary>What every paper has: the words, and the head of the production. All facts are ready to print.</summary>
public abstract record PaperFacts(PaperHead Head)
{
    /// <summary>The words of the language.</summary>
    public IReadOnlyDictionary<string, string> W => Head.W;
}
