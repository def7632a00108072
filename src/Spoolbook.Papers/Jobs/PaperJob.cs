using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Typesetting.Setup;

namespace Spoolbook.Papers.Jobs;

/// <summary>One paper to print.</summary>
/// <param name="Name">What its files are called in their folder, without their ending.</param>
/// <param name="Facts">Gathers its facts, given the links to all papers.</param>
internal sealed record PaperJob(string Name, string Template, string Title, Func<PaperLinks, PaperFacts> Facts)
{
    /// <summary>Whether it is printed; otherwise it is a web page only.</summary>
    public bool Printed { get; init; } = true;

    /// <summary>Whether it is a web page of its own: that of a pocket card is the same as the large one's.</summary>
    public bool HasPage { get; init; } = true;

    /// <summary>The production's own unless another is named.</summary>
    public Paper? Paper { get; init; }

    /// <summary>Where the index links to it.</summary>
    public LinkPlace LinkedFrom { get; init; } = LinkPlace.Papers;

    /// <summary>What the index calls it.</summary>
    public string LinkText { get; init; } = Title;
}
