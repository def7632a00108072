using System.Collections.Immutable;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.Facts;

/// <summary>A cost written out, one line for each kind of work and rate.</summary>
/// <param name="ByRoll">Whether any line is about rolls.</param>
/// <param name="RoundedApart">Whether a line differs from quantity times rate, because each roll is rounded.</param>
/// <param name="Open">What has no rate and is not in the total; empty if nothing.</param>
public sealed record CostFacts(ImmutableArray<CostLineFacts> Lines, bool ByRoll, bool RoundedApart, string Total, string Open)
{
    /// <summary>Whether nothing has a rate, so that there is nothing to add up: tax alone is tax on nothing.</summary>
    public bool Unpriced { get; init; }

    /// <summary>What to ask a price for, with how much of it.</summary>
    public string Asked { get; init; } = "";

    internal static CostFacts Of(IEnumerable<CostLine> lines, Books books, PaperFormat format)
    {
        var groups = CostGroup.Group(lines);
        var several = groups.Select(g => g.Consignment).OfType<int>().Distinct().Count() > 1;
        return new CostFacts(
            [.. groups.Select(g => CostLineFacts.Of(g, several, books, format))],
            groups.Any(g => g.Rolls.Any()),
            groups.Any(g => g.RoundedApart),
            format.Money(groups.Sum(g => g.Amount ?? 0)),
            string.Join(
                "; ",
                groups
                    .Where(g => g.Amount is null)
                    .Select(g => CostLineFacts.Name(g, several, format) + (g.Rolls.Any() ? ": " + RollRuns.Of(g.Rolls) : ""))
            )
        )
        {
            Unpriced = groups.Length > 0 && groups.Where(g => g.Kind != CostKind.Tax).All(g => g.Rate is null),
            Asked = string.Join(
                "; ",
                groups
                    .Where(g => g.Kind != CostKind.Tax)
                    .Select(g => $"{CostLineFacts.Name(g, several, format)}, {CostLineFacts.Measure(g, books, format)}")
            ),
        };
    }
}
