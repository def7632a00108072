using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Shoot.Forecasts;

/// <summary>
/// Random shoots that could be the rest of this one. Each draws the sample of finished shots again, with replacement,
/// then each shot that is left from that sample. That covers both the spread of the next shots and how little a few
/// finished ones prove (B. Efron and R. J. Tibshirani, An Introduction to the Bootstrap, 1993, for drawing again; the
/// double draw as in D. B. Rubin, The Bayesian Bootstrap, 1981).
/// </summary>
/// <remarks>
/// Film of shots is skewed, so deviations from the average are drawn on a log scale, with part of the average added to
/// make room for a shot without film of its own. A sample of n is narrower than its population: deviations are widened
/// by √(n ∕ (n − 1)) and, since its width is itself uncertain, by √((n − 1) ∕ χ²), which on a normal scale makes
/// Student's t. <see cref="Widening"/> and <see cref="WideningOfFew"/>, fitted on simulated shoots, make up the rest;
/// the table in FORECAST.md shows how well it holds.
/// </remarks>
sealed class ForecastDraws
{
    /// <summary>Added to every value before its logarithm is taken, in averages.</summary>
    const double Shift = 0.15;

    /// <summary>Makes up for losses to come, and for shoots that change as they go on.</summary>
    const double Widening = 1.04;

    /// <summary>
    /// Makes up for skewness that the log scale leaves and few values do not show. Divided by their number, and added
    /// to <see cref="Widening"/>.
    /// </summary>
    const double WideningOfFew = 0.2;

    // Nobody's shot takes a thousand times the average.
    const double Most = 1000;

    // Frames that still add up within 64 bits.
    const double Longest = 1e15;

    readonly double _average;
    readonly double[] _scaled;
    readonly double _centre;
    readonly double[] _lost;
    readonly double _ofShots;
    readonly double[][] _toDate;
    readonly double[][][] _ofKind;
    readonly StockSupply _supply;
    readonly int[] _kinds;
    readonly double[]?[] _sorted;

    /// <summary>Draws the shoots.</summary>
    /// <param name="input">At least two finished shots.</param>
    /// <param name="after">The numbers of shots to give the film for, ascending; the last is all that are left.</param>
    public ForecastDraws(ForecastInput input, IReadOnlyList<int> after, ulong seed, int draws)
    {
        var values = input.Finished.Select(s => (double)s.Film.Frames).ToArray();
        _average = Math.Max(1, values.Average());
        _scaled = [.. values.Select(v => Math.Log((v / _average) + Shift))];
        _centre = _scaled.Average();
        _lost = [.. input.Lost.Select(l => (double)l.Frames)];
        _ofShots = input.FilmOfShots.Frames;
        _toDate = [.. after.Select(_ => new double[draws])];
        _sorted = new double[after.Count][];
        _supply = new StockSupply(input);
        _kinds = [.. input.ToCome.Select(s => s.Kind)];
        _ofKind =
            _supply.Kinds == 1 ? [] : [.. after.Select(_ => Enumerable.Range(0, _supply.Kinds).Select(_ => new double[draws]).ToArray())];
        for (var i = 0; i < draws; i++)
        {
            // A stream for each, so that adding a shot changes none of the earlier ones.
            Draw(new DrawnNumbers(seed, (ulong)i), after, i);
        }

        Stretch(input.Planned);
    }

    /// <summary>Shoots drawn.</summary>
    public int Count => _toDate[0].Length;

    /// <summary>Film of stock that is enough for a percentage of shoots, for the shots up to one of the points.</summary>
    public Footage Enough(int point, int percent)
    {
        var sorted = Sorted(point);
        return new Footage(Whole(sorted[RankOf(percent, sorted.Length)]));
    }

    /// <summary>The number of shoots in which the stock lasts up to a point, each shot on film that suits its light.</summary>
    public int Lasting(int point)
    {
        Span<long> needed = stackalloc long[_supply.Kinds];
        Span<long> lacking = stackalloc long[_supply.Kinds];
        var lasting = 0;
        for (var shoot = 0; shoot < Count; shoot++)
        {
            FindLacking(point, shoot, needed, lacking);
            lasting += lacking.ContainsAnyExcept(0) ? 0 : 1;
        }

        return lasting;
    }

    /// <summary>
    /// Film to order for each kind of shots so that it is enough for a percentage of shoots, up to the last point: for
    /// each kind what is enough in the same percentage, the lowest at which all of them together suffice.
    /// </summary>
    public ImmutableArray<Footage> LackingAt(int percent)
    {
        // By kind, and within it by shoot.
        long[][] lacking = [.. Enumerable.Range(0, _supply.Kinds).Select(_ => new long[Count])];
        Span<long> needed = stackalloc long[_supply.Kinds];
        Span<long> ofShoot = stackalloc long[_supply.Kinds];
        for (var shoot = 0; shoot < Count; shoot++)
        {
            FindLacking(_toDate.Length - 1, shoot, needed, ofShoot);
            for (var kind = 0; kind < lacking.Length; kind++)
            {
                lacking[kind][shoot] = ofShoot[kind];
            }
        }

        long[][] sorted = [.. lacking.Select(kind => (long[])kind.Clone())];
        Array.ForEach(sorted, Array.Sort);
        var (low, high) = (RankOf(percent, Count), Count - 1);
        var enough = low + 1;
        while (low < high)
        {
            var rank = (low + high) / 2;
            if (Sufficing(rank) >= enough)
            {
                high = rank;
            }
            else
            {
                low = rank + 1;
            }
        }

        return [.. sorted.Select(s => new Footage(s[low]))];

        int Sufficing(int rank)
        {
            var suffices = 0;
            for (var shoot = 0; shoot < Count; shoot++)
            {
                var kind = 0;
                while (kind < lacking.Length && lacking[kind][shoot] <= sorted[kind][rank])
                {
                    kind++;
                }

                suffices += kind == lacking.Length ? 1 : 0;
            }

            return suffices;
        }
    }

    static int RankOf(int percent, int of) => ((of * percent) + 99) / 100 - 1;

    // A stretched sum that should be whole may come out a hair above.
    static long Whole(double frames) => (long)Math.Ceiling(frames - 1e-6);

    void FindLacking(int point, int shoot, Span<long> needed, Span<long> lacking)
    {
        for (var kind = 0; kind < needed.Length; kind++)
        {
            needed[kind] = Whole(_ofKind.Length == 0 ? _toDate[point][shoot] : _ofKind[point][kind][shoot]);
        }

        _supply.FindLacking(needed, lacking);
    }

    // The list may plan more than the shots so far would give. Then all shoots grow until half of them need as much.
    void Stretch(Ratio? planned)
    {
        var middle = Sorted(_toDate.Length - 1)[RankOf(50, Count)];
        if (planned?.ToDouble() is not { } least || middle >= least)
        {
            return;
        }

        // Shots that took no film at all cannot grow.
        var by = middle > 0 ? least / middle : 1;
        foreach (var films in _toDate.Concat(_ofKind.SelectMany(k => k)))
        {
            for (var i = 0; i < films.Length; i++)
            {
                films[i] = Math.Min(films[i] * by, Longest);
            }
        }

        Array.Clear(_sorted);
    }

    double[] Sorted(int point)
    {
        if (_sorted[point] is not { } sorted)
        {
            _sorted[point] = sorted = (double[])_toDate[point].Clone();
            Array.Sort(sorted);
        }

        return sorted;
    }

    void Draw(DrawnNumbers numbers, IReadOnlyList<int> after, int shoot)
    {
        var n = _scaled.Length;
        var widening = (Widening + (WideningOfFew / n)) * Math.Sqrt(n / numbers.ChiSquare(n - 1));
        var sample = new double[n];
        for (var i = 0; i < n; i++)
        {
            sample[i] = Unscaled(_centre + (widening * (_scaled[numbers.Below(n)] - _centre)));
        }

        var stockForShots = 1 + LossRate(numbers);
        var (film, shot) = (0.0, 0);
        var ofKind = new double[_supply.Kinds];
        for (var point = 0; point < after.Count; point++)
        {
            for (; shot < after[point]; shot++)
            {
                var drawn = sample[numbers.Below(n)];
                film += drawn;
                ofKind[shot < _kinds.Length ? _kinds[shot] : 0] += drawn;
            }

            _toDate[point][shoot] = Math.Min(film * stockForShots, Longest);
            for (var kind = 0; _ofKind.Length > 0 && kind < ofKind.Length; kind++)
            {
                _ofKind[point][kind][shoot] = Math.Min(ofKind[kind] * stockForShots, Longest);
            }
        }
    }

    double Unscaled(double scaled) => Math.Clamp(Math.Exp(scaled) - Shift, 0, Most) * _average;

    double LossRate(DrawnNumbers numbers)
    {
        if (_ofShots == 0)
        {
            return 0;
        }

        var lost = 0.0;
        for (var i = 0; i < _lost.Length; i++)
        {
            lost += _lost[numbers.Below(_lost.Length)];
        }

        return lost / _ofShots;
    }
}
