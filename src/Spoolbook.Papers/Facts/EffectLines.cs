using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Facts;

/// <summary>The effects of a roll in words: what the lab must leave as it is.</summary>
internal static class EffectLines
{
    public static ImmutableArray<string> Of(RollBook roll, Wording say) => [.. roll.Effects.Select(e => Line(e, say))];

    static string Line(Effect effect, Wording say)
    {
        var slates = string.Join(" + ", effect.Layers.Select(l => l.Take.Slate));
        var (key, level) = effect.Kind switch
        {
            EffectKind.FadeIn => ("effect-fade-in", ""),
            EffectKind.FadeOut => ("effect-fade-out", ""),
            EffectKind.HandCranked => ("effect-hand-cranked", ""),
            EffectKind.Dissolve when effect.Offset == Footage.Zero => ("effect-dissolve-level", ""),
            EffectKind.Dissolve => (effect.Offset.Frames > 0 ? "effect-dissolve-late" : "effect-dissolve-early", say.Stops(effect.Worst)),
            _ => ("effect-superimposition", Together(effect.Worst, say)),
        };
        var line = say.Words.Fill(
            key,
            ("from", say.Length(effect.Span.From)),
            ("to", say.Length(effect.Span.To)),
            ("slates", slates),
            ("frames", Wording.Number(effect.Span.Length.Frames)),
            ("offset", Wording.Number(Math.Abs(effect.Offset.Frames))),
            ("level", level));
        return effect.BurntOut == Footage.Zero ? line : line + " " + say.Words.Fill("effect-burnt-out", ("frames", Wording.Number(effect.BurntOut.Frames)));
    }

    // Less than a lab's printer can set: one light is 0.025 of log exposure, a twelfth of a stop (common practice).
    static string Together(double stops, Wording say) =>
        Math.Abs(stops) < 0.05 ? say.Words["effect-together-normal"] : say.Words.Fill("effect-together", ("stops", say.Stops(stops)));
}
