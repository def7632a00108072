using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Exposures;

/// <summary>What the film was rated at, take by take.</summary>
static class Ratings
{
    // A conversion filter counted in the index is marked in thirds.
    const double HalfAThird = 1 / 6.0;

    /// <summary>The index that the meter was set to for a take: its own, else the roll's, else the stock's.</summary>
    public static int IndexOf(Roll roll, StockLot stock, Take take) => take.Rated?.Value ?? roll.Rated?.Value ?? stock.Index.Value;

    /// <summary>
    /// Stops that the meter was set slower (above zero) or faster than the stock, including a filter counted in the
    /// index.
    /// </summary>
    public static double SlowerThanStock(Roll roll, StockLot stock, Take take) =>
        Math.Log2((double)stock.Index.Value / IndexOf(roll, stock, take));

    /// <summary>
    /// Stops that a take was rated slower (above zero: it got more light) or faster than its stock. An index that only
    /// counts the conversion filter on the lens, 320 for a stock of 500 with an 85, is the stock's own.
    /// </summary>
    public static double Of(Context context, Roll roll, StockLot stock, Take take)
    {
        var slower = SlowerThanStock(roll, stock, take);
        var counted = take.Filters.Any(f =>
            context.Production.FilterNamed(f.Value)?.Stops is { Value: > 0 } cost && Math.Abs(cost.Value - slower) < HalfAThird
        );
        return counted ? 0 : slower;
    }

    /// <summary>The rating that most takes of a roll have, the first of equals; null for a roll without a take to develop for.</summary>
    public static double? UsualOf(Context context, Roll roll, StockLot stock) =>
        Developed(roll)
            .GroupBy(take => Math.Round(Of(context, roll, stock, take), 1))
            .OrderByDescending(group => group.Count())
            .Select(group => (double?)Of(context, roll, stock, group.First()))
            .FirstOrDefault();

    /// <summary>The takes that a roll is developed for. A wedge of ratings is a test.</summary>
    public static IEnumerable<Take> Developed(Roll roll) => roll.Takes.Where(t => t.Mark.Value != Mark.Test);
}
