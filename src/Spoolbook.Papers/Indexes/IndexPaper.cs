using Spoolbook.Papers.Jobs;
using Spoolbook.Papers.Workbook;
using Spoolbook.Papers.WrapSummaries;

namespace Spoolbook.Papers.Indexes;

/// <summary>The page with links to all papers, and the wrap summary's figures at a glance. For the screen only.</summary>
internal sealed class IndexPaper : IPaper
{
    public IEnumerable<PaperJob> Jobs(PaperSource source)
    {
        // A strip takes ten kilobytes and more, and a telephone opens this page. Of a long shoot the wrap summary has them.
        var strips = LongShoot.Is(source.Shoot) ? StripSize.None : StripSize.Whole;
        yield return new PaperJob("index", "index.html", source.Words["index"], links => WrapSummaryPaper.Of(source, links, strips))
        {
            Printed = false,
            LinkedFrom = LinkPlace.Nowhere,
        };
    }
}
