using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Counters;

static class RewindInLight
{
    public static readonly RollCheck Check = new("counter/rewind-in-light", Level.Warning, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from light in book.Strip.Stray
        where light.Entry is Rewind && light.Layers.Length > 0
        let slates = string.Join(", ", light.Layers.Select(l => l.Take.Slate))
        select Check.At(book.Roll, light.Entry.Place, $"The film was wound back with the shutter open over {slates}, and took light a second time") with
        {
            Others = [.. light.Layers.Select(l => new Related(l.Take.Number.Place, $"take {l.Take.Slate} is on that film"))],
            Figures = [new Figure("from", context.Write(light.Span.From)), new Figure("to", context.Write(light.Span.To))],
            Help = "Tell the lab, and look at the takes before the set is struck. If the shutter was closed, write `shutter: closed`.",
        };
}
