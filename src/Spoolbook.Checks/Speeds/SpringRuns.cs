using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Speeds;

/// <summary>What the spring had to drive, take by take.</summary>
static class SpringRuns
{
    /// <summary>A take on the spring.</summary>
    /// <param name="Driven">Film driven since the spring was last wound, to the end of the take.</param>
    /// <param name="FullWind">What a full wind of the body drives.</param>
    /// <param name="WoundAt">Where the winding is written; null where it is taken for granted.</param>
    public sealed record Run(Layer Layer, Footage Driven, Located<Footage> FullWind, Place? WoundAt);

    /// <summary>
    /// The takes of a roll on the spring. Where nobody wrote down a winding, the spring is taken to have been
    /// wound before every take: so is common practice. The same holds after the film was run off, wound back
    /// or threaded again, since nobody writes down the winding between.
    /// </summary>
    public static IEnumerable<Run> Of(Context context, RollBook book)
    {
        var layers = book.Layers.ToDictionary(l => (object)l.Take, ReferenceEqualityComparer.Instance);
        var driven = Footage.Zero;
        Place? woundAt = null;
        foreach (var entry in book.Roll.Log)
        {
            switch (entry)
            {
                case Wind:
                    (driven, woundAt) = (Footage.Zero, entry.Place);
                    break;
                case RunOff or Rewind or Reload:
                    (driven, woundAt) = (Footage.Zero, null);
                    break;
                case Take take when layers.TryGetValue(take, out var layer) && take.Motor is null && take.HandCranked?.Value != true && context.Production.BodyNamed(layer.Body)?.FullWind is { } fullWind:
                    driven = woundAt is null ? layer.Span.Length : driven + layer.Span.Length;
                    yield return new Run(layer, driven, fullWind, woundAt);
                    break;
            }
        }
    }
}
