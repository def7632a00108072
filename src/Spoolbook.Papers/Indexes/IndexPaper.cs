using Spoolbook.Papers.Jobs;
using Spoolbook.Papers.WrapSummaries;

namespace Spoolbook.Papers.Indexes;

/// <summary>The page that leads to all papers, with the wrap summary's facts at a glance. It is read on a screen only.</summary>
internal sealed class IndexPaper : IPaper
{
    public IEnumerable<PaperJob> Jobs(PaperSource source)
    {
        yield return new PaperJob("index", "index.html", source.Words["index"], links => WrapSummaryPaper.Of(source, links))
        {
            Printed = false,
            LinkedFrom = LinkPlace.Nowhere,
        };
    }
}
