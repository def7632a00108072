using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Stocks;

static class RunsOut
{
    public static readonly BookCheck Check = new("stock/runs-out", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context, ShootBook book)
    {
        var production = context.Production;
        var got = production.Rolls.Where(r => !r.IsPractice).SelectMany(r => r.Takes).Where(t => t.Mark.Value is Mark.Good or Mark.Hold).Select(t => t.ShotName).ToHashSet(StringComparer.Ordinal);
        var open = production.Shots.Where(s => !got.Contains(s.Name)).ToArray();
        var finished = production.Shots.Length - open.Length;

        // A kit that went back is a shoot that is over: what is not shot by then was cut.
        if (finished < context.Of(Tolerances.ShotsToGoOn) || open.Length == 0 || production.Bodies.Any(b => b.Returned.Back is not null))
        {
            yield break;
        }

        var left = StockBook.Keep(book).Left;
        var aShot = (Ratio)book.Total.Exposed.Frames / finished;
        var covered = left.Frames / aShot;
        if (covered >= open.Length)
        {
            yield break;
        }

        var needed = new Footage((long)(aShot * open.Length).Ceiling());
        var first = open[(int)covered.Floor()];
        yield return Check.At(first.Place, $"From shot {first.Name} on there is no film left at the rate so far: {Context.Count(open.Length, "shot")} to come need about {context.Write(needed)}, and {context.Write(left)} are there") with
        {
            Shot = first.Name,
            Figures =
            [
                new("exposed", context.Write(book.Total.Exposed)),
                new("shots finished", Context.Number(finished)),
                new("film a shot", context.Write(new Footage((long)aShot.Round()))),
                new("shots to come", Context.Number(open.Length)),
                new("film for them", context.Write(needed)),
                new("film there", context.Write(left)),
            ],
            Help = "Order more while it can still come in time, or cut shots or takes now: the last day is too late for both.",
        };
    }
}
