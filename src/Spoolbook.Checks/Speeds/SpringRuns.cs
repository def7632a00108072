using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Speeds;

/// <summary>What the spring drove, take by take.</summary>
static class SpringRuns
{
    /// <summary>A take on the spring.</summary>
    /// <param name="Winding">Which winding of the roll drove it.</param>
    /// <param name="Driven">Film driven from that winding to the end of the take.</param>
    /// <param name="FullWind">Film that a full wind of the body drives.</param>
    /// <param name="WoundAt">Where the winding is logged; null where it is assumed.</param>
    public sealed record Run(Layer Layer, int Winding, Footage Driven, Located<Footage> FullWind, Place? WoundAt);

    /// <summary>
    /// The takes of a roll on the spring, where the body's full wind is known. In a production that logs no winding each
    /// take has its own. Frame by frame the spring is wound in between, and in a take that says so it was wound somewhere.
    /// </summary>
    public static IEnumerable<Run> Of(Context context, RollBook book)
    {
        var isLogged = context.Production.Rolls.Any(r => context.WalkOf(r).Moments.Any(m => IsWinding(m.Entry)));
        var layers = book.Layers.GetEnumerator();
        var (winding, isKnown) = (0, isLogged);
        foreach (var moment in book.Walk.Moments)
        {
            var fullWind = context.Production.BodyNamed(moment.After.Body)?.FullWind;
            if (IsWinding(moment.Entry) || moment.Entry is Rewind or Reload)
            {
                (winding, isKnown) = (winding + 1, isLogged);
            }
            else if (moment.Entry is RunOff && moment.After.Driven > fullWind?.Value + context.Of(Tolerances.SpringSlack))
            {
                // No spring drives that far: it was wound on the way, and nobody logs that.
                (winding, isKnown) = (winding + 1, false);
            }

            if (moment.Entry is not Take take)
            {
                continue;
            }

            layers.MoveNext();
            if (fullWind is null || take is not { IsOnSpring: true, IsFrameByFrame: false } || take.Wound?.Value == true)
            {
                continue;
            }

            winding += isKnown ? 0 : 1;
            var driven = isKnown ? moment.After.Driven : layers.Current.Span.Length;
            yield return new Run(layers.Current, winding, driven, fullWind, isKnown ? moment.After.WoundAt : null);
        }
    }

    static bool IsWinding(LogEntry? entry) => entry is Wind or Take { Wound.Value: true };
}
