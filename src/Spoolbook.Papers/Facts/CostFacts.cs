using System.Collections.Immutable;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.Facts;

/// <summary>A cost written out.</summary>
/// <param name="Open">What is not in the total for want of a rate; empty if nothing.</param>
public sealed record CostFacts(ImmutableArray<CostLineFacts> Lines, string Total, string Open)
{
    internal static CostFacts Of(IEnumerable<CostLine> lines, Wording say)
    {
        var all = lines.ToList();
        var several = all.Select(l => l.Consignment).OfType<int>().Distinct().Count() > 1;
        return new CostFacts(
            [.. all.Select(l => CostLineFacts.Of(l, several, say))],
            say.Money(CostBook.SumOf(all)),
            string.Join(", ", all.Where(l => l.Amount is null).Select(l => CostLineFacts.Name(l, several, say))));
    }
}

/// <summary>One line of a cost.</summary>
public sealed record CostLineFacts(string What, string Quantity, string Unit, string Rate, string Amount)
{
    internal static CostLineFacts Of(CostLine line, bool several, Wording say) => new(
        Name(line, several, say),
        line.Kind == CostKind.Tax ? say.Money(CostBook.ToCents(line.Quantity)) : say.Quantity(line.Quantity),
        say.Words["unit-of-" + line.Unit.ToString().ToLowerInvariant()],
        line.Rate is not { } rate ? say.Words["open"]
            : line.Kind == CostKind.Tax ? say.Percent(Film.Ratio.FromDecimal(rate))
            : say.Amount(rate) + (line.AtMinimum ? " " + say.Words["at-minimum"] : ""),
        say.Money(line.Amount));

    /// <summary>What a line is for; which consignment, where there are several and no roll tells it.</summary>
    internal static string Name(CostLine line, bool several, Wording say)
    {
        var what = say.Words["cost-" + line.Kind.ToString().ToLowerInvariant()];
        var of = line.Lot ?? line.Roll ?? (several && line.Consignment is { } number ? say.Words.Fill("consignment", ("n", Wording.Number(number))) : null);
        return what + (line.Name is null ? "" : line.Kind is CostKind.Came or CostKind.SentAway ? $" ({line.Name})" : " " + line.Name) + (of is null ? "" : ", " + of);
    }
}
