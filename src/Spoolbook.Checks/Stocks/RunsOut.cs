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
        var there = forecast.Input.Stock;
        yield return Check.At(
            first.Place,
            $"From shot {first.Name} on there is no film left at the rate so far: {Context.Count(left.Length, "shot")} to come need "
                + $"about {context.Write(needed)}, and {context.Write(there)} are there"
        ) with
        {
            Shot = first.Name,
            Figures =
            [
                new("shots finished", Context.Number(forecast.Input.Finished.Length)),
                new("film a shot", context.Write(new Footage((long)aShot.Round()))),
                new("shots to come", Context.Number(left.Length)),
                new("film for them", context.Write(needed)),
                new("film there", context.Write(there)),
            ],
            Help = "Order more while it can still come in time, or cut shots or takes now: the last day is too late for both.",
        };
    }
}
