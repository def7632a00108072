using Spoolbook.Papers.Jobs;

namespace Spoolbook.Papers.KitLists;

/// <summary>The kit list, where there is a kit.</summary>
internal sealed class KitListPaper : IPaper
{
    public IEnumerable<PaperJob> Jobs(PaperSource source)
    {
        if (source.Books.Kit.Pieces.Length > 0)
        {
            yield return new PaperJob("kit-list", "kit-list.html", source.Words["kit-list"], _ => new KitListFacts(
                source.Head,
                KitFacts.Of(source.Books.Kit, source.Format)
            ));
        }
    }
}
