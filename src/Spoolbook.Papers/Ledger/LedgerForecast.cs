using Spoolbook.Shoot.Forecasts;

namespace Spoolbook.Papers.Ledger;

/// <summary>The film still needed.</summary>
static class LedgerForecast
{
    public static void Write(LedgerJson ledger, FilmForecast forecast) => ledger.Object("forecast", () =>
        {
            var input = forecast.Input;
            var drawn = forecast.Basis == ForecastBasis.Drawn;
            ledger.Word("basis", Codes.Of(forecast.Basis));
            ledger.Objects("finished-shots", input.Finished, s =>
            {
                ledger.Word("shot", s.Name);
                ledger.Length("film", s.Film);
            });
            ledger.Count("shots-left", input.ShotsLeft);
            ledger.Length("average-shot", input.Average);
            ledger.Number("loss-rate", input.LossRate);
            ledger.Length("stock", input.Stock);
            ledger.Objects("lights", input.Kinds, k =>
            {
                ledger.Word("light", k.Light is { } light ? light.ToString().ToLowerInvariant() : null);
                ledger.Count("shots-left", forecast.ShotsOf(k));
                ledger.Length("stock", forecast.StockFor(k));
            });
            ledger.Length("too-short", input.TooShort);
            ledger.Length("unit-length", input.Unit);
            ledger.Length("plain", forecast.Plain);
            ledger.Length("plain-lacking", forecast.PlainLacking);
            ledger.Count("draws", drawn ? FilmForecast.Draws : null);
            ledger.Count("seed", drawn ? FilmForecast.Seed : null);
            ledger.Objects("figures", forecast.Figures, f =>
            {
                ledger.Count("percent", f.Percent);
                ledger.Length("needed", f.Needed);
                ledger.Length("lacking", f.Lacking);
                ledger.Count("units", f.Units);
                ledger.Count("units-to-order", f.UnitsToOrder);
                ledger.Objects("to-order", f.Orders, o =>
                {
                    ledger.Word("stock", o.Order.Stock);
                    ledger.Word("balance", o.Order.Balance is { } balance ? Codes.Of(balance) : null);
                    ledger.Length("film", o.Film);
                    ledger.Count("units", o.Units);
                });
            });
            ledger.Number("chance-it-lasts", forecast.Lasts);
            ledger.Objects("days", forecast.Days, d =>
            {
                Day(ledger, d);
                ledger.Count("shots", d.Shots);
                ledger.Objects("needed", FilmForecast.Percents.Zip(d.Needed), n =>
                {
                    ledger.Count("percent", n.First);
                    ledger.Length("film", n.Second);
                });
                ledger.Number("chance-it-lasts", d.Lasts);
            });
            DayOrNull(ledger, "runs-out", forecast.RunsOut);
            DayOrNull(ledger, "may-run-out", forecast.MayRunOut);
        });

    static void DayOrNull(LedgerJson ledger, string key, ForecastDay? day)
    {
        if (day is null)
        {
            ledger.Word(key, null);
        }
        else
        {
            ledger.Object(key, () => Day(ledger, day));
        }
    }

    static void Day(LedgerJson ledger, ForecastDay day)
    {
        ledger.Count("ahead", day.Ahead);
        ledger.Date("on", day.On);
    }
}
