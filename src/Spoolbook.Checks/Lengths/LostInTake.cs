using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Lengths;

/// <summary>Wanted takes that are partly on film that saw light outside the camera.</summary>
static class LostInTake
{
    /// <param name="says">The key of the message, with the film lost and the take.</param>
    public static IEnumerable<Finding> Look(
        RollCheck check,
        Context context,
        RollBook book,
        WasteCause cause,
        string says,
        Sentence help
    ) =>
        from layer in book.Layers
        where layer.Take.Mark.Value is Mark.Good or Mark.Hold
        let lost = book.Strip.SegmentsOver(layer.Span).Where(s => s.Cause == cause).Sum(s => s.Span.Intersect(layer.Span).Length.Frames)
        where lost > 0
        let length = context.Write(new Footage(lost))
        select check.At(book.Roll, layer.Take, layer.Take.Mark.Place, Sentence.Of(says, ("lost", length), ("take", layer.Take.Slate))) with
        {
            Figures =
            [
                new Figure(Sentence.Of("length/lost-in-take.figure.take"), context.Write(layer.Span.Length)),
                new Figure(Sentence.Of("length/lost-in-take.figure.lost"), length),
            ],
            Advice = help,
        };
}
