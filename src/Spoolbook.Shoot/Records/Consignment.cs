using System.Collections.Immutable;

namespace Spoolbook.Shoot.Records;

/// <summary>Rolls that go to the lab together, in one or more boxes.</summary>
public sealed record Consignment(Place Place)
{
    /// <summary>The day on which it went; null while it is only planned.</summary>
    public Located<DateOnly>? SentOn { get; init; }

    /// <summary>The rolls in it, by name.</summary>
    public ImmutableArray<Located<string>> Rolls { get; init; } = [];

    /// <summary>How it goes, and with whom: free words.</summary>
    public Located<string>? How { get; init; }

    /// <summary>Boxes; by default one.</summary>
    public Located<int>? Boxes { get; init; }

    /// <summary>The carrier's or the lab's receipt: a number, a name.</summary>
    public Located<string>? Receipt { get; init; }
}
