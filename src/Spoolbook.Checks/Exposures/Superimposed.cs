using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Exposures;

/// <summary>Wanted takes over one another at a steady level.</summary>
static class Superimposed
{
    /// <summary>The superimpositions of a roll, each set of takes once. A take that fades has no steady level to judge.</summary>
    public static IEnumerable<Effect> Of(RollBook book) =>
        from effect in book.Effects
        where effect.Kind == EffectKind.Superimposition
        where
            effect.Layers.All(l =>
                l.Take.Mark.Value is Mark.Good or Mark.Hold && l.FadeIn == Film.Footage.Zero && l.FadeOut == Film.Footage.Zero
            )
        group effect by string.Join(' ', effect.Layers.Select(l => l.Index)) into takes
        select takes.First();

    /// <summary>The slates of the takes: <c>5A/1 and 5B/1</c>.</summary>
    public static Sentence Slates(Effect effect) => Context.And(effect.Layers.Select(l => l.Take.Slate));

    /// <summary>The level that a take was exposed at.</summary>
    public static Sentence Level(Layer layer) => Context.Amount(layer.BaseStops);
}
