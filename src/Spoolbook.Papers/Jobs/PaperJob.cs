using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Typesetting.Setup;
using Spoolbook.Papers.Web;

namespace Spoolbook.Papers.Jobs;

/// <summary>One paper to print.</summary>
/// <param name="Name">The name of its files in their folder, without extension.</param>
/// <param name="Facts">Gathers its facts, given the links to all papers.</param>
internal sealed record PaperJob(string Name, string Template, string Title, Func<PaperLinks, PaperFacts> Facts)
{
    /// <summary>Whether it has a PDF; otherwise only a web page.</summary>
    public bool Printed { get; init; } = true;

    /// <summary>Whether it has its own web page: a pocket card shares the large one's.</summary>
    public bool HasPage { get; init; } = true;

    /// <summary>What makes its page work by a script; null for a page to read.</summary>
    public ScreenProgram? Program { get; init; }

    /// <summary>The paper size; by default the production's.</summary>
    public Paper? Paper { get; init; }

    /// <summary>Where the index links to it.</summary>
    public LinkPlace LinkedFrom { get; init; } = LinkPlace.Papers;

    /// <summary>The text of its link in the index.</summary>
    public string LinkText { get; init; } = Title;
}
