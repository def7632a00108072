using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Counters;

static class RewindMissed
{
    public static readonly RollCheck Check = new("counter/rewind-missed", Level.Warning, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from pass in SecondPasses.Of(book)
        where !pass.IsDissolve
        let missed = Missed(context, book, pass)
        where missed is not null
        select missed;

    static Finding? Missed(Context context, RollBook book, SecondPasses.Start pass)
    {
        var start = pass.First.Span.From;
        var earlier = book.Layers.Where(l => l.Pass < pass.First.Pass).ToArray();
        var inHead = book.Roll.Load.Head is { } head && start < head.Value;
        if (inHead || earlier.Any(l => l.Span.From == start))
        {
            return null;
        }

        var near = earlier.Where(l => Distance(l.Span.From, start) <= context.Of(Tolerances.RewindNear).Frames).MinBy(l => Distance(l.Span.From, start));
        if (near is null)
        {
            return null;
        }

        var off = start - near.Span.From;
        var amount = Context.Frames(Math.Abs(off.Frames));
        var side = off > Footage.Zero ? "late" : "early";
        return Check.At(book.Roll, pass.First.Take, pass.Rewind.To.Place, $"The pass of take {pass.First.Take.Slate} starts {amount} too {side} to lie on take {near.Take.Slate}") with
        {
            Others = [new Related(near.Take.Number.Place, $"take {near.Take.Slate} starts at {context.Write(near.Span.From)}")],
            Figures =
            [
                new Figure($"{near.Take.Slate} starts", context.Write(near.Span.From)),
                new Figure($"{pass.First.Take.Slate} starts", context.Write(start)),
                new Figure("out by", amount),
            ],
            Help = $"If the film really stood there, shoot the pass again or tell the editor. If it is a slip of the pen, write `rewind: {{to: {context.Write(near.Span.From - pass.ZeroMoved)}}}`.",
        };
    }

    static long Distance(Footage a, Footage b) => Math.Abs((a - b).Frames);
}
