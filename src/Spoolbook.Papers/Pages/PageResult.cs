using System.Collections.Immutable;

namespace Spoolbook.Papers.Pages;

/// <summary>A rendered page, or the faults of its template: never both.</summary>
public sealed record PageResult(PageDocument? Document, ImmutableArray<TemplateFault> Faults)
{
    public static PageResult Of(PageDocument document) => new(document, []);

    public static PageResult Failed(IEnumerable<TemplateFault> faults) => new(null, [.. faults]);
}
