using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Lengths;

static class HeadNotAllowed
{
    public static readonly RecordCheck Check = new("length/head-not-allowed", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        let first = roll.Takes.FirstOrDefault()
        where first is not null
        select roll.Load.Head is { } head ? InsideHead(context, roll, first, head) : NothingLost(roll, first) into finding
        where finding is not null
        select finding;

    static Finding? InsideHead(Context context, Roll roll, Take first, Located<Footage> head)
    {
        var (start, place) = first.From is { } from ? (from.Value, from.Place) : (first.To.Value, first.To.Place);
        if (start >= head.Value)
        {
            return null;
        }

        var verb = first.From is null ? "ends" : "starts";
        return Check.At(roll, first, place, $"Take {first.Slate} {verb} at {context.Write(start)}, on the {context.Write(head.Value)} of film that were lost in loading") with
        {
            Level = Level.Error,
            Others = [new Related(head.Place, "lost in loading")],
            Figures = [new Figure("head", context.Write(head.Value)), new Figure(first.From is null ? "take ends" : "take starts", context.Write(start))],
            Help = "Positions count from the start of the roll, the head with it. If the counter was set to zero after the head was run off, write `head: 0+00`; if not, the head or this position is wrong.",
        };
    }

    // Out of the light, or with `head: 0+00` written, somebody has thought about it.
    static Finding? NothingLost(Roll roll, Take first)
    {
        return roll.Load.Light?.Value == LoadingLight.Dark ? null : Check.At(roll, first, roll.Load.Place, "No film is allowed for the head, which sees light when a spool is loaded") with
        {
            Help = "Write what was run off before the first take, `head: 4+00`, or `head: 0+00` if the counter was set to zero after it.",
        };
    }
}
