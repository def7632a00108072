using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.CameraReports;

/// <summary>
/// The effects of a roll, grouped for pictures: fades of one kind with the same curve share a picture. A roll of ten
/// fades does not need the same curve ten times.
/// </summary>
internal static class AlikeFades
{
    // More slates than this do not fit the width of a heading.
    const int MostInOne = 4;

    /// <summary>The effects in their order, each with those that look the same.</summary>
    public static ImmutableArray<ImmutableArray<Effect>> Of(IEnumerable<Effect> effects)
    {
        var groups = new List<List<Effect>>();
        foreach (var effect in effects)
        {
            if (groups.Find(group => group.Count < MostInOne && AreAlike(group[0], effect)) is { } alike)
            {
                alike.Add(effect);
            }
            else
            {
                groups.Add([effect]);
            }
        }

        return [.. groups.Select(group => group.ToImmutableArray())];
    }

    static bool AreAlike(Effect one, Effect other) =>
        one.Kind == other.Kind
        && one.Kind is EffectKind.FadeIn or EffectKind.FadeOut
        && one.Layers is [var first]
        && other.Layers is [var second]
        && one.Span.Length == other.Span.Length
        && Enumerable
            .Range(0, (int)one.Span.Length.Frames)
            .Select(i => new Footage(i))
            .All(i => first.StopsAt(one.Span.From + i).Equals(second.StopsAt(other.Span.From + i)));
}
