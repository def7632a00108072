using System.Collections.Immutable;

namespace Spoolbook.Papers.Jobs;

/// <summary>The links to all papers of a production.</summary>
internal sealed record PaperLinks(ImmutableArray<PaperLink> Papers, ImmutableArray<PaperLink> Reports)
{
    public static PaperLinks To(IReadOnlyCollection<PaperJob> jobs) => new(At(LinkPlace.Papers, jobs), At(LinkPlace.Reports, jobs));

    static ImmutableArray<PaperLink> At(LinkPlace place, IEnumerable<PaperJob> jobs) =>
        [.. jobs.Where(j => j.LinkedFrom == place).Select(j => new PaperLink(j.LinkText, j.Name + ".html", j.Name + ".pdf"))];
}
