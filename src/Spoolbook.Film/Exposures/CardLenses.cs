using System.Collections.Immutable;

namespace Spoolbook.Film.Exposures;

/// <summary>What the lenses of a kit can be set to, and what takes light off them.</summary>
/// <param name="Widest">The widest stop of any lens; null where none is known.</param>
/// <param name="Smallest">The smallest stop of any lens; null where none is known.</param>
/// <param name="Densities">The neutral densities, by name, with the stops they take, above zero.</param>
public sealed record CardLenses(Stop? Widest, Stop? Smallest, ImmutableArray<(string Name, double Stops)> Densities)
{
    // A third of a stop for each 0.1: 0.3 takes a stop (Eastman Kodak's slides on filters).
    static readonly ImmutableArray<(string Name, double Stops)> _usual = [("ND 0.3", 1), ("ND 0.6", 2), ("ND 0.9", 3), ("ND 1.2", 4)];

    /// <summary>
    /// How to set a stop, to the nearest half. Past the smallest stop: the lightest density that brings it back onto the ring,
    /// from the kit if it has one, else a usual one. Past the widest stop: the widest, and how much light is missing.
    /// </summary>
    public CardStop Set(Stop wanted)
    {
        var av = Math.Round(wanted.Av * 2, MidpointRounding.AwayFromZero) / 2;
        if (Widest is { } widest && av < widest.Av - Hair)
        {
            return new CardStop(widest, null, Math.Ceiling(((widest.Av - av) * 2) - Hair) / 2);
        }

        if (Smallest is not { } smallest || av <= smallest.Av + Hair)
        {
            return new CardStop(new Stop(av), null, 0);
        }

        var (name, stops, inKit) = Densities
            .OrderBy(d => d.Stops)
            .Select(d => (d.Name, d.Stops, InKit: true))
            .Concat(_usual.Select(d => (d.Name, d.Stops, InKit: false)))
            .FirstOrDefault(d => av - d.Stops <= smallest.Av + Hair && av - d.Stops >= (Widest?.Av ?? double.MinValue) - Hair);
        return name is null
            ? new CardStop(new Stop(av), null, 0)
            : new CardStop(new Stop(Math.Round((av - stops) * 2, MidpointRounding.AwayFromZero) / 2), name, 0) { FilterInKit = inKit };
    }

    // Finer than any ring.
    const double Hair = 1e-6;
}
