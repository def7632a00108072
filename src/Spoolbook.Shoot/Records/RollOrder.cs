using System.Collections.Immutable;

namespace Spoolbook.Shoot.Records;

/// <summary>The lab order for one roll.</summary>
public sealed record RollOrder(Place Place)
{
    /// <summary>The process: <c>ecn-2</c>.</summary>
    public Located<string>? Process { get; init; }

    /// <summary>Stops to push (above zero) or pull (below).</summary>
    public Located<double>? Push { get; init; }

    /// <summary>Services beside the process, by the lab's names: <c>prep</c>, <c>scan</c>, <c>workprint</c>.</summary>
    public ImmutableArray<Located<string>> Services { get; init; } = [];

    /// <summary>Effects made in the camera and declared to the lab; empty where none are.</summary>
    public ImmutableArray<Located<DeclaredEffect>> Effects { get; init; } = [];

    /// <summary>The day on which it went to the lab; null where it is not written.</summary>
    public Located<DateOnly>? SentOn { get; init; }

    /// <summary>Notes for the lab.</summary>
    public Located<string>? Notes { get; init; }

    /// <summary>Whether the roll goes to the lab at all; by default it does, once anything was shot on it.</summary>
    public Located<bool>? Send { get; init; }
}
