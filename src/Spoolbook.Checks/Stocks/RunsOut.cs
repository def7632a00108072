using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Forecasts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Stocks;

static class RunsOut
{
    public static readonly BookCheck Check = new("stock/runs-out", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context, Books books)
    {
        // The kit went back, so the shoot is over: a shot that is missing by then was cut.
        if (context.Production.Bodies.Any(b => b.Returned.Back is not null))
        {
            yield break;
        }

        if ((WithoutFilm(context, books, books.Forecast) ?? AtTheRateSoFar(context, books, books.Forecast)) is { } found)
        {
            yield return found;
        }
    }

    // No average is needed to see that there is none at all. Before the first roll the lists are still being written.
    static Finding? WithoutFilm(Context context, Books books, FilmForecast forecast)
    {
        var input = forecast.Input;
        var kind = input.Kinds.FirstOrDefault(k =>
            k.Light is SubjectLight.Tungsten or SubjectLight.Daylight
            && forecast.ShotsOf(k) > 0
            && forecast.StockFor(k) == Footage.Zero
        );
        if (
            kind is null
            || books.Shoot.Rolls.IsEmpty
            || forecast.HasEnoughToGoOn
            || input.Stock == Footage.Zero
            || books.Coverage.Left is not { } left
            || left[input.ToCome.TakeWhile(s => !ReferenceEquals(input.Kinds[s.Kind], kind)).Count()].Planned is not { } first
        )
        {
            return null;
        }

        var message = kind.Light == SubjectLight.Tungsten ? "stock/runs-out.message.no-tungsten" : "stock/runs-out.message.no-daylight";
        return Check.At(
            first.Place,
            Sentence.Of(message, ("shots", Context.Count(forecast.ShotsOf(kind), "shot")), ("first", first.Name))
        ) with
        {
            Shot = first.Name,
            Figures = [new(Sentence.Of("stock/runs-out.figure.film-of-other"), context.Write(input.Stock))],
            Advice = Sentence.Of("stock/runs-out.help.light"),
        };
    }

    static Finding? AtTheRateSoFar(Context context, Books books, FilmForecast forecast)
    {
        if (
            !forecast.HasEnoughToGoOn
            || books.Coverage.Left is not { } left
            || forecast is not { PlainShot: { } aShot, Plain: { } needed, PlainReach: { } reach }
            || reach >= left.Length
        )
        {
            return null;
        }

        var first = left[reach].Planned!;
        var (shots, there, message) = (left.Length, forecast.Input.Stock, "stock/runs-out.message");

        // All the stock together may be enough, and none of it right for this light.
        if (
            forecast.PlainShortKind is { Light: { } light } kind
            && forecast.StockFor(kind) is var suits
            && suits < there
            && forecast.PlainFor(kind) is { } ofKind
            && suits < ofKind
        )
        {
            (shots, needed, there) = (forecast.ShotsOf(kind), ofKind, suits);
            message = light == SubjectLight.Tungsten ? "stock/runs-out.message.tungsten" : "stock/runs-out.message.daylight";
        }

        return Check.At(
            first.Place,
            Sentence.Of(
                message,
                ("first", first.Name),
                ("shots", Context.Count(shots, "shot")),
                ("needed", context.Write(needed)),
                ("there", context.Write(there))
            )
        ) with
        {
            Shot = first.Name,
            Figures =
            [
                new(Sentence.Of("stock/runs-out.figure.shots-finished"), Context.Number(forecast.Input.Finished.Length)),
                new(Sentence.Of("stock/runs-out.figure.film-a-shot"), context.Write(new Footage((long)aShot.Round()))),
                new(Sentence.Of("stock/runs-out.figure.shots-to-come"), Context.Number(shots)),
                new(Sentence.Of("stock/runs-out.figure.film-for-them"), context.Write(needed)),
                new(Sentence.Of("stock/runs-out.figure.film-there"), context.Write(there)),
            ],
            Advice = Sentence.Of("stock/runs-out.help"),
        };
    }
}
