using System.Collections.Immutable;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>A finding, ready to print: what to do first, where it is in the file last.</summary>
/// <param name="Id">For a link within the page.</param>
/// <param name="ToDo">What to do in the world, with quoted text set as code; null where there is nothing to do but in the file.</param>
/// <param name="Message">What is wrong, set likewise.</param>
/// <param name="InFile">What to write in the file, set likewise; null for none.</param>
public sealed record FindingFacts(
    string Id,
    string Level,
    string Check,
    Pages.Markup? ToDo,
    Markup Message,
    Pages.Markup? InFile,
    string Where,
    bool Error,
    bool Warning
)
{
    /// <summary>The report of the roll that it is about, and the take's row there; null where it is about no roll.</summary>
    public TakeLink? Report { get; init; }

    internal static ImmutableArray<FindingFacts> Of(ImmutableArray<Finding> findings, IReadOnlyList<RollBook> rolls, PaperFormat format) =>
        [
            .. findings.Select(
                (f, i) =>
                {
                    var advice = Advice.Of(f.Advice.In(format.Sentences));
                    return new FindingFacts(
                        "finding-" + PaperFormat.Number(i + 1),
                        format.Words["level-" + f.Level.ToString().ToLowerInvariant()],
                        f.Check,
                        Marked(advice.ToDo),
                        Quoting.Mark(f.Description.In(format.Sentences)),
                        Marked(advice.InFile),
                        f.Place.ToString(),
                        f.Level == Shoot.Records.Level.Error,
                        f.Level == Shoot.Records.Level.Warning
                    )
                    {
                        Report = TakeLink.Of(f.Place, rolls),
                    };
                }
            ),
        ];

    static Pages.Markup? Marked(string text) => text.Length == 0 ? null : Quoting.Mark(text);
}
