using System.Collections.Immutable;
using Spoolbook.Reading.Keys;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Editing;

/// <summary>
/// An entry that is not in the log yet. Several after the same entry come in the order in which they are given. What can
/// be written in short is: <c>wind: full</c>, and a note as its words alone.
/// </summary>
/// <param name="After">The entry that it follows, as its record has it; null at the beginning of the log.</param>
/// <param name="Word">Its kind, as the log writes it: <c>take</c>, <c>rewind</c>, <c>run-off</c>.</param>
public sealed record AddedEntry(Place? After, string Word, ImmutableArray<KeyValue> Keys) : RollChange
{
    /// <summary>Whether it comes at the end of the log, whatever is there, behind the comments that close it.</summary>
    public bool IsLast { get; private init; }

    /// <summary>A take after an entry.</summary>
    public static AddedEntry Take(Place? after, ImmutableArray<KeyValue> keys) => new(after, LogKeys.Take.Word, keys);

    /// <summary>An entry at the end of the log.</summary>
    public static AddedEntry Last(string word, ImmutableArray<KeyValue> keys) => new(null, word, keys) { IsLast = true };
}
