using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Wording;

/// <summary>The effects of a roll in words: what the lab must not correct.</summary>
internal static class EffectLines
{
    public static ImmutableArray<string> Of(RollBook roll, PaperFormat format) => Of(roll.Effects, format);

    public static ImmutableArray<string> Of(IEnumerable<Effect> effects, PaperFormat format) => [.. effects.Select(e => Line(e, format))];

    static string Line(Effect effect, PaperFormat format)
    {
        var slates = string.Join(" + ", effect.Layers.Select(l => l.Take.Slate));
        var (key, level) = effect.Kind switch
        {
            EffectKind.FadeIn => ("effect-fade-in", ""),
            EffectKind.FadeOut => ("effect-fade-out", ""),
            EffectKind.HandCranked => ("effect-hand-cranked", ""),
            EffectKind.Dissolve when effect.Offset == Footage.Zero => ("effect-dissolve-level", ""),
            EffectKind.Dissolve => (
                effect.Offset.Frames > 0 ? "effect-dissolve-late" : "effect-dissolve-early",
                format.Stops(effect.Worst)
            ),
            _ => ("effect-superimposition", Together(effect.Worst, format)),
        };
        var line = format.Words.Fill(
            key,
            ("from", format.Length(effect.Span.From)),
            ("to", format.Length(effect.Span.To)),
            ("slates", slates),
            ("frames", PaperFormat.Number(effect.Span.Length.Frames)),
            ("offset", PaperFormat.Number(Math.Abs(effect.Offset.Frames))),
            ("level", level)
        );
        return effect.BurntOut == Footage.Zero
            ? line
            : line + " " + format.Words.Fill("effect-burnt-out", ("frames", PaperFormat.Number(effect.BurntOut.Frames)));
    }

    // Finer than a lab's printer can be set: one light is 0.025 of log exposure, a twelfth of a stop (common practice).
    static string Together(double stops, PaperFormat format) =>
        Math.Abs(stops) < 0.05
            ? format.Words["effect-together-normal"]
            : format.Words.Fill("effect-together", ("stops", format.Stops(stops)));
}
