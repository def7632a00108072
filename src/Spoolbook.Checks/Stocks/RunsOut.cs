using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Findings;
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

        var forecast = books.Forecast;
        if (
            !forecast.HasEnoughToGoOn
            || books.Coverage.Left is not { } left
            || forecast is not { PlainShot: { } aShot, Plain: { } needed, PlainReach: { } reach }
            || reach >= left.Length
        )
        {
            yield break;
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

        yield return Check.At(
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
