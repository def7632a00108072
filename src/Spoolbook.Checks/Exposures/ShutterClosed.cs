using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Exposures;

static class ShutterClosed
{
    public static readonly RollCheck Check = new("exposure/shutter-closed", Level.Warning, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from layer in book.Layers
        where !layer.IsLit && layer.Take.Mark.Value is Mark.Good or Mark.Hold
        let take = layer.Take
        select Check.At(
            book.Roll,
            take,
            (take.Shutter ?? take.Scene).Place,
            Sentence.Of("exposure/shutter-closed.message", ("take", take.Slate))
        ) with
        {
            Others = [new Related(take.Mark.Place, Sentence.Of("exposure/shutter-closed.other.marked-here"))],
            Advice = Sentence.Of("exposure/shutter-closed.help"),
        };
}
