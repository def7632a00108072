using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Counters;

static class RewindPastHead
{
    public static readonly RollCheck Check = new("counter/rewind-past-head", Level.Warning, Round.Strips, Look);

    // Film wound back too far and then run on with the lens capped is as it should be.
    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from pass in SecondPasses.Of(book)
        let start = pass.First.Span.From
        where book.Roll.Load.Head is { } head && start < head.Value
        select Find(context, book.Roll, pass, book.Roll.Load.Head!);

    static Finding Find(Context context, Roll roll, SecondPasses.Start pass, Located<Footage> head)
    {
        var start = context.Write(pass.First.Span.From);
        return Check.At(roll, pass.First.Take, pass.Rewind.To.Place, $"The film was wound back to {start}, into the {context.Write(head.Value)} that saw light in loading") with
        {
            Others = [new Related(head.Place, "lost in loading")],
            Figures = [new Figure("head", context.Write(head.Value)), new Figure("the pass starts", start)],
            Help = $"If it is a slip of the pen, write where the pass really starts. If not, mark take {pass.First.Take.Slate} as no good to {context.Write(head.Value)}: the film has a flare there, and may have come off its spool.",
        };
    }
}
