namespace Spoolbook.Papers.Typesetting.Setup;

/// <summary>The few words that the renderer puts on a page, in the language of the paper.</summary>
/// <param name="PageOf">With {0} for the page's number and {1} for the number of pages.</param>
/// <param name="Done">A ticked box, for screen readers.</param>
/// <param name="NotDone">An empty box, for screen readers.</param>
public sealed record PageLabels(string PageOf, string Done, string NotDone)
{
    public static readonly PageLabels English = new("Page {0} of {1}", "done", "not done");
}
