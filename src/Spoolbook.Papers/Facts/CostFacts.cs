using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.Facts;

/// <summary>A cost written out, one line for each kind of work and rate.</summary>
/// <param name="ByRoll">Whether any line is about rolls.</param>
/// <param name="RoundedApart">Whether a line differs from its quantity times its rate, since each roll is rounded by itself.</param>
/// <param name="Open">What is not in the total for want of a rate; empty if nothing.</param>
public sealed record CostFacts(ImmutableArray<CostLineFacts> Lines, bool ByRoll, bool RoundedApart, string Total, string Open)
{
    /// <summary>Whether nothing has a rate, so that there is nothing to add up: tax by itself is of nothing.</summary>
    public bool Unpriced { get; init; }

    /// <summary>What a price is to be asked for, with how much of it.</summary>
    public string Asked { get; init; } = "";

    internal static CostFacts Of(IEnumerable<CostLine> lines, Wording say)
    {
        var groups = CostGroup.Of(lines);
        var several = groups.Select(g => g.Consignment).OfType<int>().Distinct().Count() > 1;
        return new CostFacts(
            [.. groups.Select(g => CostLineFacts.Of(g, several, say))],
            groups.Any(g => g.Rolls.Any()),
            groups.Any(g => g.RoundedApart),
            say.Money(groups.Sum(g => g.Amount ?? 0)),
            string.Join("; ", groups.Where(g => g.Amount is null).Select(g => CostLineFacts.Name(g, several, say) + (g.Rolls.Any() ? ": " + RollRuns.Of(g.Rolls) : ""))))
        {
            Unpriced = groups.Length > 0 && groups.Where(g => g.Kind != CostKind.Tax).All(g => g.Rate is null),
            Asked = string.Join("; ", groups.Where(g => g.Kind != CostKind.Tax).Select(g => $"{CostLineFacts.Name(g, several, say)}, {CostLineFacts.Measure(g, say)}")),
        };
    }
}

/// <summary>One line of a cost.</summary>
/// <param name="Rolls">The rolls that it is for; empty where it is about none.</param>
/// <param name="Quantity">With its unit.</param>
public sealed record CostLineFacts(string What, string Rolls, string Quantity, string Rate, string Amount)
{
    internal static CostLineFacts Of(CostGroup group, bool several, Wording say) => new(
        Name(group, several, say),
        RollRuns.Of(group.Rolls),
        group.Kind == CostKind.Tax ? say.Money(CostBook.ToCents(group.Quantity)) : Measure(group, say),
        group.Rate is not { } rate ? say.Words["open"]
            : group.Kind == CostKind.Tax ? say.Percent(Ratio.FromDecimal(rate))
            : say.Amount(rate),
        say.Money(group.Amount));

    /// <summary>What a line is for; of which consignment, where there are several and no roll tells it.</summary>
    internal static string Name(CostGroup group, bool several, Wording say)
    {
        var what = say.Words["cost-" + group.Kind.ToString().ToLowerInvariant()];
        var of = group.Lot ?? (several && group.Consignment is { } number ? say.Words.Fill("consignment", ("n", Wording.Number(number))) : null);
        var named = what + (group.Name is null ? "" : group.Kind is CostKind.Came or CostKind.SentAway ? $" ({group.Name})" : " " + group.Name) + (of is null ? "" : ", " + of);
        return group.AtMinimum ? say.Words.Fill("cost-at-minimum", ("what", named)) : named;
    }

    /// <summary>How much of it, with its unit.</summary>
    internal static string Measure(CostGroup group, Wording say) => say.Quantity(group.Quantity) + " " + Unit(group, say);

    static string Unit(CostGroup group, Wording say)
    {
        var unit = group.Unit.ToString().ToLowerInvariant();
        return group.Quantity == Ratio.One ? say.Words["unit-of-" + unit] : say.Words["units-of-" + unit];
    }
}
