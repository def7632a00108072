namespace Spoolbook.Papers.Typesetting.Setup;

/// <summary>The few words that the renderer itself puts on a page, in the language of the paper.</summary>
/// <param name="PageOf">With {0} for the page's number and {1} for the number of pages.</param>
/// <param name="Done">What a ticked box says to somebody who listens.</param>
/// <param name="NotDone">What an empty box says.</param>
public sealed record PageWords(string PageOf, string Done, string NotDone)
{
    public static readonly PageWords English = new("Page {0} of {1}", "done", "not done");
}
