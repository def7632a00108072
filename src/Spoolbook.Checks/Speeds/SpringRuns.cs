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

    /// <summary>The takes of a roll on the spring, in a body of which is known what a full wind drives.</summary>
    public static IEnumerable<Run> Of(Context context, RollBook book) =>
        from shot in book.Walk.Takes.Zip(book.Layers, (taken, layer) => (taken.Take, taken.Moment.After, Layer: layer))
        where shot.Take.IsOnSpring
        let fullWind = context.Production.BodyNamed(shot.Layer.Body)?.FullWind
        where fullWind is not null
        select new Run(shot.Layer, shot.After.Driven, fullWind, shot.After.WoundAt);
}
