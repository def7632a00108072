using System.Collections.Immutable;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Labs;

static class EffectsUndeclared
{
    public static readonly RollCheck Check = new("lab/effects-undeclared", Level.Warning, Round.Strips, Look);

    // One finding for each roll, as its order has one entry. Where no order names an effect, the lab hears of them some other way.
    static IEnumerable<Finding> Look(Context context, RollBook book)
    {
        if (
            !book.Roll.GoesToLab
            || book.Roll.Lab is not { } order
            || context.Production.Rolls.All(r => r.Lab is null || r.Lab.Effects.IsEmpty)
        )
        {
            yield break;
        }

        var declared = order.Effects.Select(e => e.Value).ToHashSet();
        var silent = book.Effects.Where(e => IsWanted(e) && IsMeant(e)).Where(e => !declared.Contains(KindOf(e))).ToImmutableArray();
        if (silent.IsEmpty)
        {
            yield break;
        }

        var kinds = silent.Select(KindOf).Distinct().Order().ToArray();
        var all = string.Join(", ", declared.Union(kinds).Order().Select(Key));
        var first = silent[0];
        yield return Check.At(
            book.Roll,
            (order.Effects.FirstOrDefault()?.Place ?? order.Place),
            Sentence.Of(
                "lab/effects-undeclared.message",
                ("roll", book.Roll.Name.Value),
                ("effects", Context.And(kinds.Select(Word))),
                (
                    "takes",
                    first
                        .Layers.Select(l => Sentence.Plain(l.Take.Slate))
                        .Aggregate((before, last) => Sentence.Of("lab/effects-undeclared.value.with", ("before", before), ("last", last)))
                )
            )
        ) with
        {
            Others =
            [
                .. silent
                    .DistinctBy(KindOf)
                    .Select(e => new Related(
                        PlaceOf(e),
                        Sentence.Of("lab/effects-undeclared.other.take", ("effect", Word(KindOf(e))), ("take", e.Layers[^1].Take.Slate))
                    )),
            ],
            Advice = Sentence.Of("lab/effects-undeclared.help", ("all", all)),
        };
    }

    // Rejected takes are no concern of the lab.
    static bool IsWanted(Effect effect) => effect.Layers.Any(l => l.Take.Mark.Value is Mark.Good or Mark.Hold);

    // Other checks flag takes that overlap by mistake.
    static bool IsMeant(Effect effect) => effect.Kind != EffectKind.Superimposition || effect.Layers.All(l => l.Take.Exposed is not null);

    static DeclaredEffect KindOf(Effect effect) =>
        effect.Kind switch
        {
            EffectKind.Dissolve => DeclaredEffect.Dissolve,
            EffectKind.Superimposition => DeclaredEffect.DoubleExposure,
            EffectKind.HandCranked => DeclaredEffect.HandCranked,
            _ => DeclaredEffect.Fade,
        };

    static Place PlaceOf(Effect effect)
    {
        var take = effect.Layers[^1].Take;
        return effect.Kind switch
        {
            EffectKind.FadeOut => take.FadeOut?.Place,
            EffectKind.FadeIn or EffectKind.Dissolve => take.FadeIn?.Place,
            EffectKind.HandCranked => take.HandCranked?.Place,
            _ => null,
        } ?? take.Number.Place;
    }

    static string Key(DeclaredEffect effect) =>
        effect switch
        {
            DeclaredEffect.Dissolve => "dissolve",
            DeclaredEffect.DoubleExposure => "double-exposure",
            DeclaredEffect.HandCranked => "hand-cranked",
            _ => "fade",
        };

    static Sentence Word(DeclaredEffect effect) =>
        effect switch
        {
            DeclaredEffect.Dissolve => Sentence.Of("lab/effects-undeclared.value.dissolve"),
            DeclaredEffect.DoubleExposure => Sentence.Of("lab/effects-undeclared.value.double-exposure"),
            DeclaredEffect.HandCranked => Sentence.Of("lab/effects-undeclared.value.hand-cranked"),
            _ => Sentence.Of("lab/effects-undeclared.value.fade"),
        };
}
