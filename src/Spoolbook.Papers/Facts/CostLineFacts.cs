using Spoolbook.Film;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.Facts;

/// <summary>One line of a cost.</summary>
/// <param name="Rolls">The rolls that it is for; empty where it is not about rolls.</param>
/// <param name="Quantity">With its unit.</param>
public sealed record CostLineFacts(string What, string Rolls, string Quantity, string Rate, string Amount)
{
    internal static CostLineFacts Of(CostGroup group, bool several, Books books, PaperFormat format) =>
        new(
            Name(group, several, format),
            RollRuns.Of(group.Rolls),
            group.Kind == CostKind.Tax ? format.Money(CostBook.ToCents(group.Quantity)) : Measure(group, books, format),
            group.Rate is not { } rate ? format.Words["open"]
                : group.Kind == CostKind.Tax ? format.Percent(Ratio.FromDecimal(rate))
                : group.Kind == CostKind.Push && books.Production.Rates?.PushPerStop?.Value.Part is { } part && part != 0
                    ? format.Words.Fill(
                        "cost-push-part",
                        ("percent", format.Percent(Ratio.FromDecimal(part))),
                        ("process", format.Amount(rate / part))
                    )
                : format.Amount(rate),
            format.Money(group.Amount)
        );

    /// <summary>What a line is for, with its consignment where there are several and no roll gives it.</summary>
    internal static string Name(CostGroup group, bool several, PaperFormat format)
    {
        var what = format.Words["cost-" + group.Kind.ToString().ToLowerInvariant()];
        var of = group.Lot
            ?? (several && group.Consignment is { } number ? format.Words.Fill("consignment", ("n", PaperFormat.Number(number))) : null);
        var named =
            what
            + (
                group.Name is null ? ""
                : group.Kind is CostKind.Came or CostKind.SentAway ? $" ({group.Name})"
                : group.Kind == CostKind.Process ? " " + format.Process(group.Name)
                : " " + group.Name
            )
            + (of is null ? "" : ", " + of);
        return group.AtMinimum ? format.Words.Fill("cost-at-minimum", ("what", named)) : named;
    }

    /// <summary>How much of it, with its unit.</summary>
    internal static string Measure(CostGroup group, Books books, PaperFormat format) =>
        QuantityOf(group, books, format) + " " + Unit(group, format);

    // Metres of whole cans are those that their accounts print.
    static string QuantityOf(CostGroup group, Books books, PaperFormat format)
    {
        var films = group.Lines.Select(l => (l.Film, Roll: books.Shoot.Rolls.FirstOrDefault(r => r.Roll.Name.Value == l.Roll))).ToList();
        return group.Unit == CostUnit.Metre && films.TrueForAll(f => f.Roll is not null && f.Film == f.Roll.Tally.InCan)
            ? format.Quantity(new Ratio(films.Sum(f => books.Metric.Of(f.Roll!).InCan), 100))
            : format.Quantity(group.Quantity, group.Decimals);
    }

    static string Unit(CostGroup group, PaperFormat format)
    {
        var unit = group.Unit.ToString().ToLowerInvariant();
        return group.Quantity == Ratio.One || group.Quantity == -Ratio.One
            ? format.Words["unit-of-" + unit]
            : format.Words["units-of-" + unit];
    }
}
