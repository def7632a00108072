using System.Collections.Immutable;
using System.Globalization;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Strips;

/// <summary>How a take was exposed, apart from its fades, with the working.</summary>
/// <param name="Terms">The working, line by line; none for a take without settings.</param>
public sealed record TakeExposure(ImmutableArray<TakeExposureTerm> Terms)
{
    /// <summary>Stops from normal; negative infinity under a closed shutter.</summary>
    public double Stops => Terms.Sum(t => t.Stops);

    /// <summary>
    /// The exposure of a take. A closed shutter leaves black, whatever is written. An intended exposure on the sheet
    /// comes before the settings. Where both the lens's stop and the meter's reading are written (for this speed,
    /// shutter open, no filter), it is reading less stop, less the shutter, less the filters. Otherwise the lens is
    /// taken to be right for the filters, and only the part-closed shutter counts.
    /// </summary>
    /// <param name="production">For the body's marks and the filters.</param>
    /// <param name="body">The body that the take was shot with, by name.</param>
    public static TakeExposure Of(Production production, Take take, string? body)
    {
        var shutter = ShutterOf(production, take, body);
        if (shutter is { Stops: double.NegativeInfinity })
        {
            return new TakeExposure([shutter]);
        }

        if (take.Exposed is { } meant)
        {
            return new TakeExposure([new TakeExposureTerm("meant", meant.Value)]);
        }

        var lens = LensOf(take);
        var filters = lens is null ? [] : take.Filters.Select(f => FilterOf(production, f.Value));
        return new TakeExposure([.. filters.Prepend(shutter).Prepend(lens).OfType<TakeExposureTerm>()]);
    }

    static TakeExposureTerm? LensOf(Take take)
    {
        if (take.Stop is { } set && take.Reading is { } asked)
        {
            return new TakeExposureTerm($"lens at {set.Value}, meter asked for {asked.Value}", asked.Value.Av - set.Value.Av);
        }

        return null;
    }

    static TakeExposureTerm? FilterOf(Production production, string name) =>
        production.FilterNamed(name)?.Stops is { } cost ? new TakeExposureTerm($"filter {name}", -cost.Value) : null;

    // The trade's stops for the body's mark, else the opening itself. An unknown mark counts nothing, and a check flags it.
    static TakeExposureTerm? ShutterOf(Production production, Take take, string? body)
    {
        if (take.Shutter is not { } set)
        {
            return null;
        }

        var mark = production.BodyNamed(body)?.MarkNamed(set.Value);
        double? cost =
            OpeningOf(production, set.Value, body) is not { } part ? null
            : part.Sign == 0 ? Film.Stops.Black
            : mark?.Stops is { } counted ? -counted.Value
            : Film.Stops.FromFraction(part.ToDouble());
        return cost is { } stops && stops != 0 ? new TakeExposureTerm($"shutter {set.Value}", stops) : null;
    }

    /// <summary>
    /// The part of the full opening that a shutter mark leaves: the body's mark of that name, else the fraction as written.
    /// Null where it is neither, or no fraction from 0 to 1.
    /// </summary>
    /// <param name="body">The body that the take was shot with, by name.</param>
    public static Ratio? OpeningOf(Production production, string mark, string? body) =>
        (production.BodyNamed(body)?.MarkNamed(mark)?.Open.Value ?? OpenFraction(mark)) is { Sign: >= 0 } open && open <= 1 ? open : null;

    // 3/4 or 0.75.
    static Ratio? OpenFraction(string written)
    {
        var parts = written.Split('/');
        return parts.Length <= 2 && Number(parts[0]) is { } above && Number(parts.Length == 2 ? parts[1] : "1") is { Sign: > 0 } below
            ? above / below
            : null;
    }

    static Ratio? Number(string written) =>
        decimal.TryParse(written, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value)
            ? Ratio.FromDecimal(value)
            : null;
}
