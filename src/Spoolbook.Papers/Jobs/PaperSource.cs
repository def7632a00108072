using System.Collections.Immutable;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Shipments;

namespace Spoolbook.Papers.Jobs;

/// <summary>The input of all papers.</summary>
/// <param name="Rules">The production's own rules that differ from the house's.</param>
/// <param name="NotLookedAt">What no check could judge.</param>
internal sealed record PaperSource(
    Books Books,
    ImmutableArray<Finding> Findings,
    ImmutableArray<Waived> Waived,
    ImmutableArray<RuleChange> Rules,
    ImmutableArray<NotLookedAt> NotLookedAt,
    PaperHead Head,
    PaperFormat Format
)
{
    /// <summary>What came back from the lab, by the roll's name.</summary>
    public ImmutableSortedDictionary<string, CanReturn> Returned { get; init; } = ImmutableSortedDictionary<string, CanReturn>.Empty;

    public ShootBook Shoot => Books.Shoot;

    public Production Production => Books.Shoot.Production;

    public Translations Words => Format.Words;

    public ImmutableArray<WaiverFacts> Waivers => [.. Waived.Select(w => WaiverFacts.Of(w, Format))];

    public ImmutableArray<WaiverFacts> WaiversOf(RollBook roll) =>
        [.. Waived.Where(w => w.Finding.Roll == roll.Roll.Name.Value).Select(w => WaiverFacts.Of(w, Format))];
}
