using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Lengths;

static class FogInTake
{
    public static readonly RollCheck Check = new("length/fog-in-take", Level.Warning, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from layer in book.Layers
        where layer.Take.Mark.Value is Mark.Good or Mark.Hold
        let lost = book.Strip.SegmentsOver(layer.Span).Where(s => s.Cause == WasteCause.Fog).Sum(s => s.Span.Intersect(layer.Span).Length.Frames)
        where lost > 0
        let length = context.Write(new Footage(lost))
        select Check.At(book.Roll, layer.Take, layer.Take.Mark.Place, $"{length} of take {layer.Take.Slate} was fogged when the door was opened") with
        {
            Figures = [new Figure("take", context.Write(layer.Span.Length)), new Figure("lost", length)],
            Help = "Mark it as no good, or shoot it again; the lab order tells the lab where to expect fog.",
        };
}
