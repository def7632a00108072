using System.Collections.Immutable;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Strips;

/// <summary>Frames next to each other with the same layers, in the same account, spent by the same hands.</summary>
/// <param name="Span">The frames.</param>
/// <param name="Layers">The layers over them, in the order in which they were shot.</param>
/// <param name="Account">Where they fall.</param>
/// <param name="Cause">Why they are waste; null where they are not.</param>
public sealed record Segment(Span Span, ImmutableArray<Layer> Layers, Account Account, WasteCause? Cause)
{
    /// <summary>
    /// The take that spent this film: of those over it the worst marked, since its mark holds, and of equals
    /// the first, since a later pass used no new film. Null where no take was shot.
    /// </summary>
    public Layer? Owner { get; init; }

    /// <summary>Whose film it is: of whoever fogged it, unloaded it, loaded it, shot it, ran it or left it, in this order.</summary>
    public required Custody Custody { get; init; }
}
