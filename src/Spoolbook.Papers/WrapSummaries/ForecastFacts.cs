using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Forecasts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>Whether the film will last, ready to print.</summary>
/// <param name="Answers">Whether it lasts, how much is needed, and what to order, each once.</param>
/// <param name="Notes">What limits the answers, a sentence each.</param>
/// <param name="GoesBy">What the figures are based on, a sentence each; empty where nothing is forecast.</param>
/// <param name="Figures">Film for the shots left, by how sure it is; empty where nothing was drawn.</param>
/// <param name="UnitHead">The head of the column of units, with their length.</param>
/// <param name="Method">How it is computed; empty where nothing was drawn.</param>
public sealed record ForecastFacts(
    ImmutableArray<Glance> Answers,
    ImmutableArray<string> Notes,
    ImmutableArray<string> GoesBy,
    ImmutableArray<ForecastLine> Figures,
    string UnitHead,
    string Method
)
{
    /// <summary>What the chance and the film needed are chances of, beside the average; empty where nothing was drawn.</summary>
    public string Explained { get; private init; } = "";

    // More names than this are no answer at a glance.
    const int MostDropped = 4;

    /// <param name="dropped">Shots that are given up, so that they are not counted as got.</param>
    internal static ForecastFacts Of(FilmForecast forecast, PaperFormat format, IEnumerable<string>? dropped = null) =>
        new(
            [.. AnswersOf(forecast, format, [.. dropped ?? []])],
            [.. NotesOf(forecast, format)],
            forecast.Basis is not (ForecastBasis.TooFew or ForecastBasis.Drawn) ? [] : [.. Grounds(forecast.Input, format)],
            [.. forecast.Figures.Select(f => ForecastLine.Of(f, format))],
            forecast.Input.Unit is { } unit
                ? format.Words.Fill("forecast-units", ("unit", format.UnitLength(unit)))
                : format.Words["forecast-units-unknown"],
            forecast.Basis == ForecastBasis.Drawn
                ? format.Words.Fill(
                    "forecast-method",
                    ("draws", format.Thousands(FilmForecast.Draws)),
                    ("finished", PaperFormat.Number(forecast.Input.Finished.Length))
                )
                : ""
        )
        {
            Explained = Explain(forecast, format),
        };

    static IEnumerable<Glance> AnswersOf(FilmForecast forecast, PaperFormat format, ImmutableArray<string> dropped) =>
        forecast.Basis switch
        {
            ForecastBasis.Drawn => Drawn(forecast, forecast.Figures.Single(f => f.Percent == FilmForecast.Usual), format),
            ForecastBasis.TooFew => OnAverage(forecast, format),
            ForecastBasis.NothingLeft =>
            [
                Lasts(
                    dropped.IsEmpty
                        ? format.Words["forecast-done"]
                        : format.Words.Fill(
                            "forecast-done-but",
                            ("dropped", dropped.Length > MostDropped ? format.Count(dropped.Length, "shots") : string.Join(", ", dropped))
                        ),
                    format
                ),
            ],
            ForecastBasis.NoList or ForecastBasis.NothingFinished => [Lasts(format.Words["forecast-unknown"], format)],
            _ => throw new ArgumentOutOfRangeException(nameof(forecast), forecast.Basis, "No words for this basis."),
        };

    static IEnumerable<Glance> Drawn(FilmForecast forecast, ForecastFigure figure, PaperFormat format)
    {
        if (HasStock(forecast))
        {
            yield return Lasts(format.Words.Fill("forecast-chance", ("chance", format.Chance(forecast.Lasts ?? Ratio.Zero))), format);
        }

        yield return Needed(
            format.Words.Fill(
                "forecast-sure",
                ("needed", format.LengthRoundedUp(figure.Needed)),
                ("percent", PaperFormat.Number(figure.Percent))
            ),
            forecast,
            format
        );
        if (HasStock(forecast))
        {
            yield return Order(figure.Orders, format);
        }
    }

    static IEnumerable<Glance> OnAverage(FilmForecast forecast, PaperFormat format)
    {
        if (HasStock(forecast))
        {
            yield return Lasts(
                forecast.PlainLacking is { } lacking && lacking > Footage.Zero
                    ? format.Words.Fill("forecast-plain-lacking", ("lacking", format.LengthRoundedUp(lacking)))
                    : format.Words["yes"],
                format
            );
        }

        yield return Needed(
            format.Words.Fill("forecast-plain", ("needed", format.LengthRoundedUp(forecast.Plain ?? Footage.Zero))),
            forecast,
            format
        );
        if (HasStock(forecast))
        {
            yield return Order(forecast.PlainOrders ?? [], format);
        }
    }

    static Glance Lasts(string answer, PaperFormat format) => new(answer, format.Words["forecast"]);

    static Glance Needed(string answer, FilmForecast forecast, PaperFormat format) =>
        new(answer, format.Words.Fill("forecast-needed-for", ("shots", Shots(forecast, format))));

    // A number alone where nobody can say of what.
    static Glance Order(IReadOnlyCollection<StockLacking> orders, PaperFormat format) =>
        new(
            orders.Count == 0 ? format.Words["forecast-order-nothing"]
                : OrderWords.Units(orders, format) is { Length: > 0 } units ? units
                : PaperFormat.Number(orders.Sum(o => o.Units ?? 0)),
            format.Words["forecast-order"]
        );

    static IEnumerable<string> NotesOf(FilmForecast forecast, PaperFormat format) =>
        forecast.Basis switch
        {
            ForecastBasis.NoList => [format.Words["forecast-no-list"]],
            ForecastBasis.NothingFinished => [format.Words.Fill("forecast-nothing-finished", ("shots", Shots(forecast, format)))],
            ForecastBasis.TooFew =>
            [
                format.Words.Fill(
                    "forecast-too-few",
                    ("finished", format.Count(forecast.Input.Finished.Length, "shots")),
                    ("fewest", PaperFormat.Number(forecast.FewestToDraw))
                ),
                .. HasStock(forecast) ? Lights(forecast, format) : [],
            ],
            ForecastBasis.Drawn when HasStock(forecast) => [.. Lights(forecast, format), .. RunsOut(forecast, format)],
            _ => [],
        };

    // Three figures are about the same film.
    static string Explain(FilmForecast forecast, PaperFormat format) =>
        forecast is { Basis: ForecastBasis.Drawn, Plain: { } average } && HasStock(forecast)
            ? format.Words.Fill(
                IsCapped(forecast) ? "forecast-explained-surest" : "forecast-explained",
                ("finished", format.Count(forecast.Input.Finished.Length, "shots")),
                ("needed", format.LengthRoundedUp(forecast.Figures.First(f => f.Percent == FilmForecast.Usual).Needed)),
                ("chance", format.Chance(forecast.Lasts ?? Ratio.Zero)),
                ("percent", PaperFormat.Number(FilmForecast.Usual)),
                ("average", format.LengthWithUnit(average))
            )
            : "";

    // However many runs it was enough in: so few shots prove no more.
    static bool IsCapped(FilmForecast forecast) => forecast.Lasts == FilmForecast.Surest(forecast.Input.Finished.Length);

    static IEnumerable<string> RunsOut(FilmForecast forecast, PaperFormat format) =>
        forecast.RunsOut is { } likely ? [format.Words.Fill("forecast-runs-out", ("day", Day(likely, format)))]
        : forecast.MayRunOut is { } possible ? [format.Words.Fill("forecast-may-run-out", ("day", Day(possible, format)))]
        : [];

    // Only where some of the stock is of no use: the sum would hide it.
    static IEnumerable<string> Lights(FilmForecast forecast, PaperFormat format) =>
        from kind in forecast.Input.Kinds
        where kind.Light is not null && forecast.StockFor(kind) < forecast.Input.Stock
        select format.Words.Fill(
            kind.Light == SubjectLight.Tungsten ? "forecast-for-tungsten" : "forecast-for-daylight",
            ("shots", format.Count(forecast.ShotsOf(kind), "shots")),
            ("film", format.LengthWithUnit(forecast.StockFor(kind)))
        );

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
