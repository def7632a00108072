using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Exposures;

/// <summary>A take's stop against the meter's.</summary>
/// <param name="Off">Stops that the film got above what the meter gave and the sheet intends; below zero, under it.</param>
/// <param name="Needed">The right stop for the reading, with the filters and the shutter as they were.</param>
/// <param name="FilterLoss">Stops that the filters take and the meter did not include.</param>
/// <param name="ShutterLoss">Stops that the part-closed shutter takes.</param>
sealed record Metering(Roll Roll, Take Take, double Off, Stop Needed, double FilterLoss, double ShutterLoss)
{
    // Readings and filters are marked in thirds; less than half of one means nothing.
    const double HalfAThird = 1 / 6.0;

    /// <summary>Every take with a reading that can be judged. Timed exposures cannot: the meter was set for the running camera.</summary>
    public static IEnumerable<Metering> Of(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        from shot in context.TakesWithBodies(roll)
        let metering = Of(context, roll, shot.Take, shot.Body)
        where metering is not null
        select metering;

    /// <summary>Whether the missing light is just what the filters take.</summary>
    public bool ForgotFilter => FilterLoss > HalfAThird && Math.Abs(Off + FilterLoss) < HalfAThird;

    /// <summary>Whether the missing light is just what the shutter takes.</summary>
    public bool ForgotShutter => ShutterLoss > HalfAThird && Math.Abs(Off + ShutterLoss) < HalfAThird;

    static Metering? Of(Context context, Roll roll, Take take, Body? body)
    {
        if (take is not { Timed: null, Reading: { } reading, Stop: { } stop } || StopNotOnLens.IsSo(context, roll, take))
        {
            return null;
        }

        if (FilterLossOf(context, roll, take) is not { } filters || take.OpeningIn(body) is not { IsBlack: false, Stops: var open })
        {
            return null;
        }

        var shutter = Math.Abs(open);
        var needed = reading.Value.OpenedBy(filters + shutter + (take.Exposed?.Value ?? 0));
        return new Metering(roll, take, needed.Av - stop.Value.Av, needed, filters, shutter);
    }

    // A conversion filter is often counted once for all, in the index set on the meter.
    static double? FilterLossOf(Context context, Roll roll, Take take)
    {
        var losses = take.Filters.Select(f => context.Production.FilterNamed(f.Value)?.Stops?.Value).ToArray();
        if (losses.Contains(null))
        {
            return null;
        }

        var rated = context.Production.LotOf(roll) is { } lot ? Ratings.SlowerThanStock(roll, lot, take) : 0;
        var inRating = losses.FirstOrDefault(l => rated > HalfAThird && Math.Abs(l!.Value - rated) < HalfAThird) ?? 0;
        return losses.Sum() - inRating;
    }
}
