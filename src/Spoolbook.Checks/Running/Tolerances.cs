using Spoolbook.Film;

namespace Spoolbook.Checks.Running;

/// <summary>How far something may be out before a check speaks. Every threshold of every check stands here, with its reason.</summary>
public sealed record Tolerances
{
    /// <summary>
    /// A second pass that starts this near to the start of an earlier take, and not on it, was meant to start
    /// on it. A second of film: what a hand on the rewind key misses; farther away is a choice.
    /// </summary>
    public Footage RewindNear { get; init; } = new(24);

    /// <summary>
    /// Film beyond a full wind that is let pass: the kit's figure is a round one, and no two springs are alike.
    /// </summary>
    public Footage SpringSlack { get; init; } = new(20);
}
