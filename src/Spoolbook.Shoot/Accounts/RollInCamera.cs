using Spoolbook.Film;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Accounts;

/// <summary>How far a roll is, for whoever holds the camera.</summary>
/// <param name="Book">The roll.</param>
public sealed record RollInCamera(RollBook Book)
{
    /// <summary>Where the film is, as the sheet counts; null after an entry that cannot be read.</summary>
    public Footage? At => End.OnSheet;

    /// <summary>The pass that is next run; from 1.</summary>
    public int Pass => End.Pass;

    /// <summary>Up to where the film ahead is exposed already, as the sheet counts; null where all of it is fresh.</summary>
    public Footage? ExposedTo => End.Position < End.Furthest ? End.Furthest - End.Zero : null;

    /// <summary>Film that nothing was shot on and no light came to.</summary>
    public Footage Left => Book.Tally.ShortEnd;

    /// <summary>The speed set.</summary>
    public Speed Speed => End.Speed;

    /// <summary>How long the fresh film runs at the speed set, in seconds.</summary>
    public Ratio Seconds => Left.Seconds(Speed);

    /// <summary>
    /// Film that the spring still drives; null where a motor drives it, where the body's full wind is not known, where
    /// nobody logged the last winding, and after a run-off that no wind drives: it was wound on the way.
    /// </summary>
    public Footage? SpringLeft { get; private init; }

    RollStand End => Book.Walk.EndOfLog;

    /// <summary>A roll of a production.</summary>
    public static RollInCamera Of(RollBook roll, Production production)
    {
        var (end, ranOff) = (roll.Walk.EndOfLog, roll.Walk.Moments is [.., { Entry: RunOff }]);
        var left =
            end is { IsOnSpring: true, WoundAt: not null } && production.BodyNamed(end.Body)?.FullWind is { } wind
                ? end.LeftOnSpring(wind.Value)
                : (Footage?)null;
        return new RollInCamera(roll) { SpringLeft = ranOff && left == Footage.Zero ? null : left };
    }
}
