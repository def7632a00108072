using System.Collections.Immutable;
using System.Globalization;
using Spoolbook.Film;

namespace Spoolbook.Shoot.Accounts;

/// <summary>
/// Lines of the cost that differ only in their roll, as one line of a bill: the same work at the same rate. Rolls at
/// the minimum are a group apart from rolls by the foot, because another price applies.
/// </summary>
/// <param name="Lines">The lines, at least one, in their order.</param>
public sealed record CostGroup(ImmutableArray<CostLine> Lines)
{
    CostLine First => Lines[0];

    /// <summary>What it is for.</summary>
    public CostKind Kind => First.Kind;

    /// <summary>The process, the service, or the source of stock; null where the kind says it all.</summary>
    public string? Name => First.Name;

    /// <summary>The lot of raw stock, by name; null where the lines are not about one.</summary>
    public string? Lot => First.Lot;

    /// <summary>The number of the consignment, for what is billed by consignment; null where the lines are about rolls.</summary>
    public int? Consignment => First.Roll is null ? First.Consignment : null;

    /// <summary>The rolls, by name; empty where the lines are not about rolls.</summary>
    public IEnumerable<string> Rolls => Lines.Select(l => l.Roll).OfType<string>();

    /// <summary>Whether each roll costs the minimum, or all of them together do.</summary>
    public bool AtMinimum => First.AtMinimum;

    // Where the minimum is for all rolls together, the line keeps their film and its rate.
    bool IsEachAtMinimum => AtMinimum && First.Roll is not null;

    /// <summary>What the quantity counts: rolls, where each costs the minimum.</summary>
    public CostUnit Unit => IsEachAtMinimum ? CostUnit.Roll : First.Unit;

    /// <summary>How many of the unit, exact.</summary>
    public Ratio Quantity => IsEachAtMinimum ? Lines.Length : Lines.Aggregate(Ratio.Zero, (sum, l) => sum + l.Quantity);

    /// <summary>Price of one; for tax, the rate. Null where none was written.</summary>
    public decimal? Rate => IsEachAtMinimum ? First.Minimum : First.Rate;

    /// <summary>Decimals of the quantity, from two to five, with which its product with the rate comes out to the cent.</summary>
    public int Decimals =>
        Rate is { } rate
            ? Enumerable.Range(2, 3).Append(5).First(places => places == 5 || Product(Rounded(places), rate) == Product(Quantity, rate))
            : 2;

    /// <summary>The sum of the lines, each in whole cents; null while they are open.</summary>
    public decimal? Amount => First.Amount is null ? null : CostBook.SumOf(Lines);

    /// <summary>Whether rounding roll by roll made another sum than quantity times rate.</summary>
    public bool RoundedApart =>
        AtMinimum == IsEachAtMinimum && Amount is { } amount && Rate is { } rate && Product(Quantity, rate) != amount;

    Ratio Rounded(int places) => Ratio.FromDecimal(decimal.Parse(Quantity.ToText(places), CultureInfo.InvariantCulture));

    static decimal? Product(Ratio quantity, decimal rate) => CostBook.ToCents(quantity * Ratio.FromDecimal(rate));

    /// <summary>Groups lines by the kind of work, in the order of the kinds. Each line is in exactly one group.</summary>
    public static ImmutableArray<CostGroup> Group(IEnumerable<CostLine> lines) =>
        [
            .. from line in lines
            group line by (
                line.Stage,
                line.Kind,
                line.Name,
                line.Lot,
                Consignment: line.Roll is null ? line.Consignment : null,
                line.Unit,
                line.Rate,
                line.AtMinimum,
                Least: line.AtMinimum ? line.Minimum : null,
                line.Open
            ) into alike
            orderby alike.Key.Kind
            select new CostGroup([.. alike]),
        ];
}
