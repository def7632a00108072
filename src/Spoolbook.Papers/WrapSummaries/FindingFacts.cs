using System.Collections.Immutable;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>A finding, ready to print.</summary>
/// <param name="Id">For a link within the page.</param>
/// <param name="Message">What is wrong, with quoted text set as code.</param>
/// <param name="Help">The advice, set likewise; null for none.</param>
public sealed record FindingFacts(
    string Id,
    string Level,
    string Check,
    Markup Message,
    string Where,
    Pages.Markup? Help,
    bool Error,
    bool Warning
)
{
    internal static ImmutableArray<FindingFacts> Of(ImmutableArray<Finding> findings, PaperFormat format) =>
        [
            .. findings.Select(
                (f, i) =>
                    new FindingFacts(
                        "finding-" + PaperFormat.Number(i + 1),
                        format.Words["level-" + f.Level.ToString().ToLowerInvariant()],
                        f.Check,
                        Quoting.Mark(f.Message),
                        f.Place.ToString(),
                        f.Help.Length == 0 ? null : Quoting.Mark(f.Help),
                        f.Level == Shoot.Records.Level.Error,
                        f.Level == Shoot.Records.Level.Warning
                    )
            ),
        ];
}
