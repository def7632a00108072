using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Forecasts;

namespace Spoolbook.Papers.Facts;

/// <summary>Whether the film will last, written out.</summary>
/// <param name="Verdict">What a producer wants to know, in a sentence or three.</param>
/// <param name="GoesBy">What the figures go by, a sentence each; empty where nothing is forecast.</param>
/// <param name="Figures">Film for the shots left; empty where nothing was drawn.</param>
/// <param name="UnitHead">The head of the column of units, with their length.</param>
/// <param name="Method">How it is reckoned; empty where nothing was drawn.</param>
public sealed record ForecastFacts(string Verdict, ImmutableArray<string> GoesBy, ImmutableArray<ForecastLine> Figures, string UnitHead, string Method)
{
    internal static ForecastFacts Of(FilmForecast forecast, Wording say) => new(
        string.Join(" ", Verdicts(forecast, say)),
        forecast.Basis is not (ForecastBasis.TooFew or ForecastBasis.Drawn) ? [] : [.. Grounds(forecast.Input, say)],
        [.. forecast.Figures.Select(f => ForecastLine.Of(f, say))],
        forecast.Input.Unit is { } unit ? say.Words.Fill("forecast-units", ("unit", say.LengthRoundedUp(unit))) : say.Words["forecast-units-unknown"],
        forecast.Basis == ForecastBasis.Drawn
            ? say.Words.Fill("forecast-method", ("draws", Wording.Number(FilmForecast.Draws)), ("finished", Wording.Number(forecast.Input.Finished.Length)))
            : "");

    static IEnumerable<string> Verdicts(FilmForecast forecast, Wording say) => forecast.Basis switch
    {
        ForecastBasis.NoList => [say.Words["forecast-no-list"]],
        ForecastBasis.NothingLeft => [say.Words["forecast-nothing-left"]],
        ForecastBasis.NothingFinished => [say.Words.Fill("forecast-nothing-finished", ("shots", Shots(forecast, say)))],
        ForecastBasis.TooFew => TooFew(forecast, say),
        ForecastBasis.Drawn => Drawn(forecast, say),
        _ => throw new ArgumentOutOfRangeException(nameof(forecast), forecast.Basis, "No words for this basis."),
    };

    static IEnumerable<string> TooFew(FilmForecast forecast, Wording say)
    {
        yield return say.Words.Fill("forecast-too-few", ("finished", say.Count(forecast.Input.Finished.Length, "shots")), ("fewest", Wording.Number(forecast.FewestToDraw)));
        yield return say.Words.Fill("forecast-plain", ("shots", Shots(forecast, say)), ("needed", say.LengthRoundedUp(forecast.Plain ?? Footage.Zero)));
        if (HasStock(forecast))
        {
            yield return forecast.PlainLacking is { } lacking && lacking > Footage.Zero
                ? say.Words.Fill("forecast-plain-lacking", ("stock", say.LengthWithUnit(forecast.Input.Stock)), ("lacking", say.LengthRoundedUp(lacking)))
                : say.Words.Fill("forecast-plain-enough", ("stock", say.LengthWithUnit(forecast.Input.Stock)));
        }
    }

    static IEnumerable<string> Drawn(FilmForecast forecast, Wording say)
    {
        if (HasStock(forecast))
        {
            yield return say.Words.Fill(
                "forecast-chance",
                ("shots", Shots(forecast, say)),
                ("stock", say.LengthWithUnit(forecast.Input.Stock)),
                ("chance", say.Chance(forecast.Lasts ?? Ratio.Zero)));
            if (forecast.RunsOut is { } likely)
            {
                yield return say.Words.Fill("forecast-runs-out", ("day", Day(likely, say)));
            }
            else if (forecast.MayRunOut is { } possible)
            {
                yield return say.Words.Fill("forecast-may-run-out", ("day", Day(possible, say)));
            }
        }

        var figure = forecast.Figures[FilmForecast.Percents.IndexOf(80)];
        yield return say.Words.Fill("forecast-enough", ("shots", Shots(forecast, say)), ("percent", Wording.Number(figure.Percent)), ("needed", say.LengthRoundedUp(figure.Needed)));
    }

    static IEnumerable<string> Grounds(ForecastInput input, Wording say)
    {
        yield return say.Words.Fill(
            "forecast-goes-by",
            ("finished", say.Count(input.Finished.Length, "shots")),
            ("average", say.LengthWithUnit(input.Average ?? Footage.Zero)),
            ("loss", say.Percent(input.LossRate)));
        if (input.TooShort > Footage.Zero)
        {
            yield return say.Words.Fill("forecast-too-short", ("film", say.LengthWithUnit(input.TooShort)));
        }
    }

    // Without a list of what came, nobody knows what is left.
    static bool HasStock(FilmForecast forecast) => forecast.Input.Unit is not null;

    static string Shots(FilmForecast forecast, Wording say) => say.Count(forecast.Input.ShotsLeft ?? 0, "shots");

    static string Day(ForecastDay day, Wording say) => day.On is { } on ? say.Date(on) : say.Count(day.Ahead, "forecast-day");
}

/// <summary>Film for the shots left in so many of a hundred cases.</summary>
public sealed record ForecastLine(string Cases, string Needed, string Units, string Lacking, string ToOrder)
{
    internal static ForecastLine Of(ForecastFigure figure, Wording say) => new(
        say.Words.Fill("forecast-cases", ("percent", Wording.Number(figure.Percent))),
        say.LengthRoundedUp(figure.Needed),
        Wording.OrDash(figure.Units),
        figure.Units is null || figure.Lacking == Footage.Zero ? Wording.OrDash(null) : say.LengthRoundedUp(figure.Lacking),
        figure.UnitsToOrder is > 0 ? Wording.Number(figure.UnitsToOrder.Value) : Wording.OrDash(null));
}
