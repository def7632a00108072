using System.Collections.Immutable;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Strips;

/// <summary>Frames next to each other with the same layers, account and custody.</summary>
/// <param name="Span">The frames.</param>
/// <param name="Layers">Their layers, in the order shot.</param>
/// <param name="Account">Their account.</param>
/// <param name="Cause">Why they are waste; null where they are not.</param>
public sealed record Segment(Span Span, ImmutableArray<Layer> Layers, Account Account, WasteCause? Cause)
{
    /// <summary>
    /// The take that used this film: of those over it the worst marked, which decides the account; of equals the first,
    /// since a later pass uses no new film. Null without a take.
    /// </summary>
    public Layer? Owner { get; init; }

    /// <summary>Who had the film: whoever fogged it, unloaded it, loaded it, shot it, ran it or left it, in this order.</summary>
    public required Custody Custody { get; init; }
}
