using System.Collections.Immutable;
using Spoolbook.Reading.Keys;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Editing;

/// <summary>
/// An entry that is not in the log yet. Several after the same entry keep the order they are given in. An entry is written
/// short where it can be: <c>wind: full</c>, a note as its words alone.
/// </summary>
/// <param name="After">The entry before it, by its record's place; null at the beginning of the log.</param>
/// <param name="Word">Its kind, as the log writes it: <c>take</c>, <c>rewind</c>, <c>run-off</c>.</param>
public sealed record AddedEntry(Place? After, string Word, ImmutableArray<KeyValue> Keys) : RollChange
{
    /// <summary>Whether it goes to the very end of the log, behind the comments that close it.</summary>
    public bool IsLast { get; private init; }

    public static AddedEntry Take(Place? after, ImmutableArray<KeyValue> keys) => new(after, LogKeys.Take.Word, keys);

    public static AddedEntry Last(string word, ImmutableArray<KeyValue> keys) => new(null, word, keys) { IsLast = true };
}
