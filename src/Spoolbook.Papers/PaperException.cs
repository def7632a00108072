namespace Spoolbook.Papers;

/// <summary>Printing broke: a mistake of ours, with the paper that it was on.</summary>
public sealed class PaperException(string paper, Exception broken) : Exception($"Printing {paper} broke: {broken.Message}", broken)
{
    /// <summary>The paper's name, without the end of its files.</summary>
    public string Paper { get; } = paper;
}
