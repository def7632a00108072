namespace Spoolbook.Shoot.Forecasts;

/// <summary>
/// What the shots lack when each may only be shot on a stock that suits its light, and the film is shared out as well
/// as it can be. Shots of some kinds together lack what they need beyond all the film that suits any of them (P. Hall,
/// On Representatives of Subsets, 1935); the kind that most stocks suit is charged last.
/// </summary>
sealed class StockSupply
{
    readonly long[] _reach;

    public StockSupply(ForecastInput input)
    {
        Kinds = Math.Max(1, input.Kinds.Length);
        _reach = new long[1 << Kinds];
        for (var kinds = 1; kinds < _reach.Length; kinds++)
        {
            _reach[kinds] = input.Kinds.IsEmpty
                ? input.Stock.Frames
                : Chosen(kinds).SelectMany(k => input.Kinds[k].Pools).Distinct().Sum(p => input.Pools[p].Film.Frames);
        }
    }

    /// <summary>The number of kinds of shots; at least one.</summary>
    public int Kinds { get; }

    /// <summary>The frames lacking for each kind; none where the stock lasts.</summary>
    /// <param name="needed">The frames needed for each kind.</param>
    /// <param name="lacking">Takes the answer, by kind.</param>
    public void FindLacking(ReadOnlySpan<long> needed, Span<long> lacking)
    {
        lacking.Clear();
        for (var kinds = 1; kinds < _reach.Length; kinds++)
        {
            var (of, last) = (0L, 0);
            for (var kind = 0; kind < Kinds; kind++)
            {
                if ((kinds & (1 << kind)) != 0)
                {
                    (of, last) = (of + needed[kind], kind);
                }
            }

            lacking[last] = Math.Max(lacking[last], of - _reach[kinds]);
        }

        // So far each figure is what the kinds up to it lack together, and at least what fewer of them do.
        for (var (kind, before) = (0, 0L); kind < Kinds; kind++)
        {
            var together = Math.Max(before, lacking[kind]);
            (lacking[kind], before) = (together - before, together);
        }
    }

    IEnumerable<int> Chosen(int kinds) => Enumerable.Range(0, Kinds).Where(k => (kinds & (1 << k)) != 0);
}
