using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Counters;

static class DissolveMisaligned
{
    public static readonly RollCheck Check = new("counter/dissolve-misaligned", Level.Warning, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from effect in book.Effects
        where effect.Kind == EffectKind.Dissolve && Math.Abs(effect.Dip) > context.Of(Tolerances.DissolveLevel)
        select Find(context, book, effect);

    static Finding Find(Context context, RollBook book, Effect effect)
    {
        var (outgoing, incoming) = (effect.Layers[0], effect.Layers[1]);
        var (closes, opens) = (outgoing.Closing, incoming.Opening);
        var place = incoming.Take.From?.Place ?? ContradictionFinder.StoodAt(book, incoming.Take) ?? incoming.Take.Place;
        return Check.At(book.Roll, incoming.Take, place, Describe(effect)) with
        {
            Others =
            [
                new Related(
                    outgoing.Take.FadeOut!.Place,
                    Sentence.Of(
                        "counter/dissolve-misaligned.other.take-starts-to-fade-out-at",
                        ("take", outgoing.Take.Slate),
                        ("from", context.Write(closes.From))
                    )
                ),
            ],
            Figures =
            [
                new Figure(
                    Sentence.Of("counter/dissolve-misaligned.figure.fade-out"),
                    Context.FromTo(context.Write(closes.From), context.Write(closes.To))
                ),
                new Figure(
                    Sentence.Of("counter/dissolve-misaligned.figure.fade-in"),
                    Context.FromTo(context.Write(opens.From), context.Write(opens.To))
                ),
                new Figure(Sentence.Of("counter/dissolve-misaligned.figure.out-by"), Context.Frames(Math.Abs(effect.Offset.Frames))),
            ],
            Advice =
                effect.Offset == Footage.Zero
                    ? Sentence.Of("counter/dissolve-misaligned.help.lengths")
                    : Sentence.Of(
                        "counter/dissolve-misaligned.help.start",
                        ("start", context.Write(closes.From - ZeroMoved(book, incoming)))
                    ),
        };
    }

    static Sentence Describe(Effect effect) =>
        Sentence.Of(
            effect.Offset.Frames switch
            {
                0 => "counter/dissolve-misaligned.message.lengths",
                > 0 => "counter/dissolve-misaligned.message.late",
                _ => "counter/dissolve-misaligned.message.early",
            },
            ("outgoing", effect.Layers[0].Take.Slate),
            ("incoming", effect.Layers[1].Take.Slate),
            ("does", Does(effect)),
            ("off", Context.Frames(Math.Abs(effect.Offset.Frames)))
        );

    static Sentence Does(Effect effect) =>
        double.IsNegativeInfinity(effect.Dip)
            ? Sentence.Of("counter/dissolve-misaligned.value.black")
            : Sentence.Of(
                effect.Dip < 0 ? "counter/dissolve-misaligned.value.dips" : "counter/dissolve-misaligned.value.bumps",
                ("stops", Context.Stops(Math.Abs(effect.Dip)))
            );

    static Footage ZeroMoved(RollBook book, Layer layer) => book.Strip.Moves.First(m => ReferenceEquals(m.Entry, layer.Take)).ZeroMoved;
}
