using System.Collections.Immutable;
using Spoolbook.Reading.Editing;

namespace Spoolbook.Entry.Lines;

/// <summary>A roll, as far as the next line about it must know.</summary>
public sealed record RollSoFar(string Name)
{
    /// <summary>The body it is in; null where nothing says it.</summary>
    public string? Body { get; init; }

    /// <summary>Whether it was unloaded.</summary>
    public bool IsOut { get; init; }

    /// <summary>The keys of its last take; empty before the first.</summary>
    public ImmutableArray<KeyValue> LastTake { get; init; } = [];

    /// <summary>The slates of its takes, in the order of the log.</summary>
    public ImmutableArray<string> Slates { get; init; } = [];
}
