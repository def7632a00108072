using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Exposures;

static class FadeTooLong
{
    public static readonly RollCheck Check = new("exposure/fade-too-long", Level.Warning, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from layer in book.Layers
        let length = layer.Written.Length
        where length > Footage.Zero && layer.FadeIn + layer.FadeOut > length
        select Find(context, book.Roll, layer, length);

    static Finding Find(Context context, Roll roll, Layer layer, Footage length)
    {
        var take = layer.Take;
        var longest = layer.FadeOut > layer.FadeIn ? take.FadeOut! : take.FadeIn!;
        var isAlone = longest.Value > length;
        return Check.At(
            roll,
            take,
            longest.Place,
            Sentence.Of(
                isAlone ? "exposure/fade-too-long.message" : "exposure/fade-too-long.message.overlap",
                ("take", take.Slate),
                ("length", Context.Frames(length.Frames)),
                ("fade", Context.Frames(longest.Value.Frames))
            )
        ) with
        {
            Others = [new Related(take.To.Place, Sentence.Of("exposure/fade-too-long.other"))],
            Figures =
            [
                new(Sentence.Of("exposure/fade-too-long.figure.take"), context.Write(length)),
                new(Sentence.Of("exposure/fade-too-long.figure.in"), context.Write(layer.FadeIn)),
                new(Sentence.Of("exposure/fade-too-long.figure.out"), context.Write(layer.FadeOut)),
            ],
            Advice = Sentence.Of("exposure/fade-too-long.help"),
        };
    }
}
