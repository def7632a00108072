using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Editing;

/// <summary>One thing to change in a roll's log.</summary>
public abstract record LogChange;

/// <summary>Keys of a take that is in the log.</summary>
/// <param name="Take">Where it stands, as its record tells.</param>
public sealed record ChangedTake(Place Take, ImmutableArray<KeyValue> Keys) : LogChange;

/// <summary>A take that is not in the log yet. Several after the same entry come in the order in which they are given.</summary>
/// <param name="After">The entry that it follows, as its record tells; null at the beginning of the log.</param>
public sealed record AddedTake(Place? After, ImmutableArray<KeyValue> Keys) : LogChange;

/// <summary>A key of a take with what is to stand after it: one value, a list, or nothing at all, which takes the key out.</summary>
public sealed record KeyValue(string Key, ImmutableArray<string> Values)
{
    public KeyValue(string key, string value)
        : this(key, [value])
    {
    }

    /// <summary>Takes a key out.</summary>
    public static KeyValue Without(string key) => new(key, ImmutableArray<string>.Empty);
}

/// <summary>A file with its changes written in, or why they cannot be.</summary>
public sealed record EditedText(string? Text, EditFault? Fault);

/// <summary>Why a change cannot be written.</summary>
public sealed record EditFault(Place Place, string Message, string Help);

/// <summary>A key of a take as it is written: its own text, and whether it is a list.</summary>
public sealed record WrittenKey(string Key, string Text);
