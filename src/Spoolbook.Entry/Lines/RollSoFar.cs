using System.Collections.Immutable;
using Spoolbook.Reading.Editing;

namespace Spoolbook.Entry.Lines;

/// <summary>What the next line about a roll must know of it.</summary>
public sealed record RollSoFar(string Name)
{
    /// <summary>The body it is in; null where no record says.</summary>
    public string? Body { get; init; }

    /// <summary>When it was unloaded; null while it is in a camera.</summary>
    public DateTime? Out { get; init; }

    /// <summary>Whether it is unloaded.</summary>
    public bool IsOut => Out is not null;

    /// <summary>What happened to it last; null where nothing is in its log.</summary>
    public LineVerb? Last { get; init; }

    /// <summary>The keys of its last take; empty before the first.</summary>
    public ImmutableArray<KeyValue> LastTake { get; init; } = [];

    /// <summary>Whether the last take was of this shot.</summary>
    public bool IsShotOfLast(ImmutableArray<string> scene, ImmutableArray<string> shot)
    {
        return Is(TakeKeyNames.Scene, scene) && Is(TakeKeyNames.Shot, shot);

        bool Is(string key, ImmutableArray<string> values) =>
            LastTake.FirstOrDefault(k => k.Key == key)?.Values.SequenceEqual(values) ?? values.IsEmpty;
    }

    /// <summary>The slates of its takes, in the order of the log.</summary>
    public ImmutableArray<string> Slates { get; init; } = [];
}
