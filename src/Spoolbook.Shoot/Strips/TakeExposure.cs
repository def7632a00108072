using System.Collections.Immutable;
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

    // An unknown mark counts nothing.
    static TakeExposureTerm? ShutterOf(Production production, Take take, string? body) =>
        take.OpeningIn(production.BodyNamed(body)) is { Stops: not 0 } opening
            ? new TakeExposureTerm($"shutter {take.Shutter!.Value}", opening.Stops)
            : null;
}
