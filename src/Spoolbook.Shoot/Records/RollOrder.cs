using System.Collections.Immutable;

namespace Spoolbook.Shoot.Records;

/// <summary>What the lab must do with one roll.</summary>
public sealed record RollOrder(Place Place)
{
    /// <summary>The process: <c>ecn-2</c>.</summary>
    public Located<string>? Process { get; init; }

    /// <summary>Stops to push (above zero) or pull (below).</summary>
    public Located<double>? Push { get; init; }

    /// <summary>
    /// What is wanted beside the process, by the names of the lab's services: <c>prep </c>, <c>scan </c>, <c>workprint </c>.
    /// </summary>
    public ImmutableArray<Located<string>> Services { get; init; } = [];

    /// <summary>Effects made in the camera that the lab is told of; empty where nobody named them.</summary>
    public ImmutableArray<Located<DeclaredEffect>> Effects { get; init; } = [];

    /// <summary>The day on which it went to the lab; null where nobody wrote it down.</summary>
    public Located<DateOnly>? SentOn { get; init; }

    /// <summary>Words for the lab.</summary>
    public Located<string>? Notes { get; init; }

    /// <summary>Whether the roll goes to the lab at all; it does unless it says no.</summary>
    public Located<bool>? Send { get; init; }
}
