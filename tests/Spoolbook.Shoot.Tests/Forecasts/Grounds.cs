using CsCheck;
using Spoolbook.Film;
using Spoolbook.Shoot.Forecasts;

namespace Spoolbook.Shoot.Tests.Forecasts;

/// <summary>Inputs for forecasts, by hand and at random.</summary>
static class Grounds
{
    public static ForecastInput Of(IEnumerable<long> finished, int left, long stock) =>
        new()
        {
            Finished = [.. finished.Select((f, i) => new FinishedShot($"{i + 1}", new Footage(f)))],
            Lost = [new Footage(200), new Footage(320)],
            FilmOfShots = new Footage(4000),
            ShotsLeft = left,
            Stock = new Footage(stock),
        };

    public static Gen<ForecastInput> Any { get; } =
        from finished in Gen.Frequency((8, Gen.Long[1, 4000]), (1, Gen.Const(0L)), (1, Gen.Long[100_000, 1_000_000])).Array[5, 30]
        from lost in Gen.Long[0, 4000].Array[0, 8]
        from ofShots in Gen.Long[0, 40_000]
        from left in Gen.Int[1, 40]
        from stock in Gen.Long[0, 100_000]
        from days in Gen.Int[0, 6]
        select Of(finished, left, stock) with
        {
            Lost = [.. lost.Select(l => new Footage(l))],
            FilmOfShots = new Footage(ofShots),
            Unit = new Footage(4000),
            DaysToCome = [.. Enumerable.Range(1, days).Select(d => new DateOnly(2026, 10, d))],
        };
}
