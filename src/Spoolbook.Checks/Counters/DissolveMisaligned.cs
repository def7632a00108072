using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Counters;

static class DissolveMisaligned
{
    public static readonly RollCheck Check = new("counter/dissolve-misaligned", Level.Warning, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from effect in book.Effects
        where effect.Kind == EffectKind.Dissolve && Math.Abs(effect.Worst) > context.Of(Tolerances.DissolveLevel)
        select Find(context, book, effect);

    static Finding Find(Context context, RollBook book, Effect effect)
    {
        var (outgoing, incoming) = (effect.Layers[0], effect.Layers[1]);
        var (closes, opens) = (outgoing.Closing, incoming.Opening);
        var place = incoming.Take.From?.Place ?? SlipFinder.StoodAt(book, incoming.Take) ?? incoming.Take.Place;
        return Check.At(book.Roll, incoming.Take, place, $"The dissolve from {outgoing.Take.Slate} to {incoming.Take.Slate} {How(effect)}") with
        {
            Others = [new Related(outgoing.Take.FadeOut!.Place, $"take {outgoing.Take.Slate} starts to fade out at {context.Write(closes.From)}")],
            Figures =
            [
                new Figure("fade out", $"{context.Write(closes.From)} to {context.Write(closes.To)}"),
                new Figure("fade in", $"{context.Write(opens.From)} to {context.Write(opens.To)}"),
                new Figure("out by", Context.Frames(Math.Abs(effect.Offset.Frames))),
            ],
            Help = effect.Offset == Footage.Zero
                ? "Both halves of a dissolve take the same number of frames: see whether one of the lengths is a slip of the pen."
                : $"Both halves start on the same frame. If it is a slip of the pen, write `rewind: {{to: {context.Write(closes.From - ZeroMoved(book, incoming))}}}`; if not, shoot the second half again or tell the editor.",
        };
    }

    static string How(Effect effect)
    {
        var level = $"{(effect.Worst < 0 ? "dips" : "bumps")} by {Context.Stops(Math.Abs(effect.Worst))}";
        level = double.IsNegativeInfinity(effect.Worst) ? "goes through black" : level;
        var off = Context.Frames(Math.Abs(effect.Offset.Frames));
        return effect.Offset.Frames switch
        {
            0 => $"{level}: its halves are not equally long",
            > 0 => $"{level}: its second half starts {off} late",
            _ => $"{level}: its second half starts {off} early",
        };
    }

    static Footage ZeroMoved(RollBook book, Layer layer) => book.Strip.Moves.First(m => ReferenceEquals(m.Entry, layer.Take)).ZeroMoved;
}
