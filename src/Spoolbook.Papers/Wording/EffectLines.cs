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

    /// <summary>A line for each kind, where a lab looks for it: <c>fade out: 10+12–11+20, 17+38–19+30</c>.</summary>
    public static ImmutableArray<string> Briefly(RollBook roll, PaperFormat format) =>
        [
            .. from effect in roll.Effects
            group $"{format.Length(effect.Span.From)}–{format.Length(effect.Span.To)}" by Kind(effect, format) into places
            select places.Key + " " + string.Join(", ", places),
        ];

    static string Kind(Effect effect, PaperFormat format) =>
        format.Words[
            effect.Kind switch
            {
                EffectKind.FadeIn => "effect-brief-fade-in",
                EffectKind.FadeOut => "effect-brief-fade-out",
                EffectKind.Dissolve => "effect-brief-dissolve",
                EffectKind.HandCranked => "effect-brief-hand-cranked",
                _ when effect.Layers.Length == 2 => "effect-brief-superimposition",
                _ when effect.Layers.Length == 3 => "effect-brief-triple",
                _ => "effect-brief-exposed-often",
            }
        ];

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
            _ => ("effect-superimposition", Level(effect.Worst, format)),
        };
        var line = format.Words.Fill(
            key,
            ("from", format.Length(effect.Span.From)),
            ("to", format.Length(effect.Span.To)),
            ("slates", slates),
            ("what", Kind(effect, format)),
            ("frames", PaperFormat.Number(effect.Span.Length.Frames)),
            ("offset", PaperFormat.Number(Math.Abs(effect.Offset.Frames))),
            ("level", level)
        );
        return effect.BurntOut == Footage.Zero
            ? line
            : line + " " + format.Words.Fill("effect-burnt-out", ("frames", PaperFormat.Number(effect.BurntOut.Frames)));
    }

    /// <summary>What the exposures of a frame make together: <c>together normal</c>.</summary>
    public static string Together(Effect effect, PaperFormat format) =>
        IsNormal(effect.Worst)
            ? format.Words["picture-together-normal"]
            : format.Words.Fill("picture-together-stops", ("stops", format.Stops(effect.Worst)));

    // Finer than a lab's printer can be set: one light is 0.025 of log exposure, a twelfth of a stop (common practice).
    static bool IsNormal(double stops) => Math.Abs(stops) < 0.05;

    static string Level(double stops, PaperFormat format) =>
        IsNormal(stops) ? format.Words["effect-together-normal"] : format.Words.Fill("effect-together", ("stops", format.Stops(stops)));
}
