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
    /// <param name="Driven">Film driven from the last winding to the end of the take.</param>
    /// <param name="FullWind">Film that a full wind of the body drives.</param>
    /// <param name="WoundAt">Where the winding is logged; null where it is assumed.</param>
    public sealed record Run(Layer Layer, Footage Driven, Located<Footage> FullWind, Place? WoundAt);

    /// <summary>The takes of a roll on the spring, where the body's full wind is known.</summary>
    public static IEnumerable<Run> Of(Context context, RollBook book) =>
        from shot in book.Walk.Takes.Zip(book.Layers, (taken, layer) => (taken.Take, taken.Moment.After, Layer: layer))
        where shot.Take.IsOnSpring
        let fullWind = context.Production.BodyNamed(shot.Layer.Body)?.FullWind
        where fullWind is not null
        select new Run(shot.Layer, shot.After.Driven, fullWind, shot.After.WoundAt);
}
