using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Strips;

/// <summary>What lies on or under the takes: everything but a take that decides where a frame falls.</summary>
/// <param name="Fogged">Film lost where the door was opened.</param>
/// <param name="Tail">Film exposed in unloading.</param>
/// <param name="Heads">Film exposed in loading, at the head and wherever the roll was threaded again.</param>
/// <param name="Left">Film beyond the farthest run and the tail.</param>
/// <param name="RunOffs">Film run without a picture.</param>
/// <param name="Thrown">Whether what was left was thrown away.</param>
sealed record Ground(IReadOnlyList<Span> Fogged, Span Tail, IReadOnlyList<Span> Heads, Span Left, IReadOnlyList<Span> RunOffs, bool Thrown)
{
    /// <summary>
    /// Where a frame falls. What ruined a frame comes before any take on it: fog, then unloading, then
    /// loading. Then the worst mark of its takes holds. Only then does it count how an unshot frame came by.
    /// </summary>
    public (Account Account, WasteCause? Cause) Fall(Func<GroundKind, bool> isHere, Mark? worst)
    {
        if (isHere(GroundKind.Fog))
        {
            return (Account.Waste, WasteCause.Fog);
        }

        if (isHere(GroundKind.Tail))
        {
            return (Account.Waste, WasteCause.Tail);
        }

        if (isHere(GroundKind.Head))
        {
            return (Account.Waste, WasteCause.Head);
        }

        if (worst is { } mark)
        {
            return ByMark(mark);
        }

        if (isHere(GroundKind.Left))
        {
            return Thrown ? (Account.Waste, WasteCause.End) : (Account.ShortEnd, null);
        }

        return (Account.Waste, isHere(GroundKind.RunOff) ? WasteCause.RunOff : WasteCause.Gap);
    }

    /// <summary>All its stretches, each with its kind.</summary>
    public IEnumerable<(Span Span, GroundKind Kind)> Stretches() =>
        Fogged.Select(s => (s, GroundKind.Fog))
            .Append((Tail, GroundKind.Tail))
            .Concat(Heads.Select(s => (s, GroundKind.Head)))
            .Append((Left, GroundKind.Left))
            .Concat(RunOffs.Select(s => (s, GroundKind.RunOff)));

    static (Account Account, WasteCause? Cause) ByMark(Mark mark) => mark switch
    {
        Mark.Good => (Account.Good, null),
        Mark.Hold => (Account.Hold, null),
        Mark.NoGood => (Account.NoGood, null),
        Mark.Test => (Account.Waste, WasteCause.Test),
        _ => throw new ArgumentOutOfRangeException(nameof(mark)),
    };
}

/// <summary>The kinds of ground.</summary>
enum GroundKind
{
    Fog,
    Tail,
    Head,
    Left,
    RunOff,
}
