using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Forecasts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>Whether the film will last, ready to print.</summary>
/// <param name="Verdict">What a producer wants to know, in a sentence or three.</param>
/// <param name="GoesBy">What the figures are based on, a sentence each; empty where nothing is forecast.</param>
/// <param name="Figures">Film for the shots left; empty where nothing was drawn.</param>
/// <param name="UnitHead">The head of the column of units, with their length.</param>
/// <param name="Method">How it is computed; empty where nothing was drawn.</param>
public sealed record ForecastFacts(
    string Verdict,
    ImmutableArray<string> GoesBy,
    ImmutableArray<ForecastLine> Figures,
    string UnitHead,
    string Method
)
{
    internal static ForecastFacts Of(FilmForecast forecast, PaperFormat format) =>
        new(
            string.Join(" ", Verdicts(forecast, format)),
            forecast.Basis is not (ForecastBasis.TooFew or ForecastBasis.Drawn) ? [] : [.. Grounds(forecast.Input, format)],
            [.. forecast.Figures.Select(f => ForecastLine.Of(f, format))],
            forecast.Input.Unit is { } unit
                ? format.Words.Fill("forecast-units", ("unit", format.UnitLength(unit)))
                : format.Words["forecast-units-unknown"],
            forecast.Basis == ForecastBasis.Drawn
                ? format.Words.Fill(
                    "forecast-method",
                    ("draws", PaperFormat.Number(FilmForecast.Draws)),
                    ("finished", PaperFormat.Number(forecast.Input.Finished.Length))
                )
                : ""
        );

    static IEnumerable<string> Verdicts(FilmForecast forecast, PaperFormat format) =>
        forecast.Basis switch
        {
            ForecastBasis.NoList => [format.Words["forecast-no-list"]],
            ForecastBasis.NothingLeft => [format.Words["forecast-nothing-left"]],
            ForecastBasis.NothingFinished => [format.Words.Fill("forecast-nothing-finished", ("shots", Shots(forecast, format)))],
            ForecastBasis.TooFew => TooFew(forecast, format),
            ForecastBasis.Drawn => Drawn(forecast, format),
            _ => throw new ArgumentOutOfRangeException(nameof(forecast), forecast.Basis, "No words for this basis."),
        };

    static IEnumerable<string> TooFew(FilmForecast forecast, PaperFormat format)
    {
        yield return format.Words.Fill(
            "forecast-too-few",
            ("finished", format.Count(forecast.Input.Finished.Length, "shots")),
            ("fewest", PaperFormat.Number(forecast.FewestToDraw))
        );
        yield return format.Words.Fill(
            "forecast-plain",
            ("shots", Shots(forecast, format)),
            ("needed", format.LengthRoundedUp(forecast.Plain ?? Footage.Zero))
        );
        if (HasStock(forecast))
        {
            yield return forecast.PlainLacking is { } lacking && lacking > Footage.Zero
                ? format.Words.Fill(
                    "forecast-plain-lacking",
                    ("stock", format.LengthWithUnit(forecast.Input.Stock)),
                    ("lacking", format.LengthRoundedUp(lacking))
                )
                : format.Words.Fill("forecast-plain-enough", ("stock", format.LengthWithUnit(forecast.Input.Stock)));
            foreach (var sentence in Lights(forecast, format).Concat(Order(forecast.PlainOrders ?? [], format)))
            {
                yield return sentence;
            }
        }
    }

    static IEnumerable<string> Drawn(FilmForecast forecast, PaperFormat format)
    {
        if (HasStock(forecast))
        {
            yield return format.Words.Fill(
                "forecast-chance",
                ("shots", Shots(forecast, format)),
                ("stock", format.LengthWithUnit(forecast.Input.Stock)),
                ("chance", format.Chance(forecast.Lasts ?? Ratio.Zero))
            );
            foreach (var light in Lights(forecast, format))
            {
                yield return light;
            }

            if (forecast.RunsOut is { } likely)
            {
                yield return format.Words.Fill("forecast-runs-out", ("day", Day(likely, format)));
            }
            else if (forecast.MayRunOut is { } possible)
            {
                yield return format.Words.Fill("forecast-may-run-out", ("day", Day(possible, format)));
            }
        }

        var figure = forecast.Figures[FilmForecast.Percents.IndexOf(80)];
        yield return format.Words.Fill(
            "forecast-enough",
            ("shots", Shots(forecast, format)),
            ("percent", PaperFormat.Number(figure.Percent)),
            ("needed", format.LengthRoundedUp(figure.Needed))
        );
        foreach (var order in Order(figure.Orders, format))
        {
            yield return order;
        }
    }

    // Only where some of the stock is of no use: the sum would hide it.
    static IEnumerable<string> Lights(FilmForecast forecast, PaperFormat format) =>
        from kind in forecast.Input.Kinds
        where kind.Light is not null && forecast.StockFor(kind) < forecast.Input.Stock
        select format.Words.Fill(
            kind.Light == SubjectLight.Tungsten ? "forecast-for-tungsten" : "forecast-for-daylight",
            ("shots", format.Count(forecast.ShotsOf(kind), "shots")),
            ("film", format.LengthWithUnit(forecast.StockFor(kind)))
        );

    static IEnumerable<string> Order(IReadOnlyCollection<StockLacking> orders, PaperFormat format) =>
        OrderWords.Units(orders, format) is { Length: > 0 } units ? [format.Words.Fill("forecast-order", ("units", units))] : [];

    static IEnumerable<string> Grounds(ForecastInput input, PaperFormat format)
    {
        yield return format.Words.Fill(
            "forecast-goes-by",
            ("finished", format.Count(input.Finished.Length, "shots")),
            ("average", format.LengthWithUnit(input.Average ?? Footage.Zero)),
            ("loss", format.Percent(input.LossRate))
        );
        if (input.TooShort > Footage.Zero)
        {
            yield return format.Words.Fill("forecast-too-short", ("film", format.LengthWithUnit(input.TooShort)));
        }
    }

    // Without a list of what came, nobody knows what is left.
    static bool HasStock(FilmForecast forecast) => forecast.Input.Unit is not null;

    static string Shots(FilmForecast forecast, PaperFormat format) => format.Count(forecast.Input.ShotsLeft ?? 0, "shots");

    static string Day(ForecastDay day, PaperFormat format) => day.On is { } on ? format.Date(on) : format.Count(day.Ahead, "forecast-day");
}
