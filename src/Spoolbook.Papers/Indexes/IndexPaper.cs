using Spoolbook.Papers.Jobs;
using Spoolbook.Papers.WrapSummaries;

namespace Spoolbook.Papers.Indexes;

/// <summary>The page with links to all papers, and the wrap summary's figures at a glance. For the screen only.</summary>
internal sealed class IndexPaper : IPaper
{
    public IEnumerable<PaperJob> Jobs(PaperSource source)
    {
        yield return new PaperJob("index", "index.html", source.Words["index"], links => WrapSummaryPaper.Of(source, links, brief: false))
        {
            Printed = false,
            LinkedFrom = LinkPlace.Nowhere,
        };
    }
}
