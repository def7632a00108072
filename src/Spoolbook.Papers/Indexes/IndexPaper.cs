using Spoolbook.Papers.Jobs;
using Spoolbook.Papers.WrapSummaries;

namespace Spoolbook.Papers.Indexes;

/// <summary>The page with links to all papers, and the wrap summary's figures at a glance. For the screen only.</summary>
internal sealed class IndexPaper : IPaper
{
    // A strip takes ten kilobytes and more, and a telephone opens this page. Of a longer shoot the wrap summary has them.
    const int MostStrips = 80;

    public IEnumerable<PaperJob> Jobs(PaperSource source)
    {
        var strips = source.Shoot.Rolls.Length <= MostStrips ? StripSize.Whole : StripSize.None;
        yield return new PaperJob("index", "index.html", source.Words["index"], links => WrapSummaryPaper.Of(source, links, strips))
        {
            Printed = false,
            LinkedFrom = LinkPlace.Nowhere,
        };
    }
}
