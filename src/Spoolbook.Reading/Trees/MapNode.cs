using System.Collections.Immutable;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Trees;

/// <summary>A map, in brackets or on lines of its own.</summary>
sealed class MapNode(Place place, int start, int end, bool inBrackets, ImmutableArray<MapEntry> written, ImmutableArray<MapEntry> entries)
    : Node(place, start, end)
{
    /// <summary>The entries written in the map itself, <c>&lt;&lt;</c> among them, in the order of the file.</summary>
    public ImmutableArray<MapEntry> Written { get; } = written;

    /// <summary>The entries as meant: the written ones, each key once, and behind them what <c>&lt;&lt;</c> merges in.</summary>
    public ImmutableArray<MapEntry> Entries { get; } = entries;

    /// <summary>Whether it is in brackets, where a comma ends a value.</summary>
    public bool InBrackets { get; } = inBrackets;

    public override long Weight { get; } = 1 + entries.Sum(e => 1 + e.Value.Weight);

    public override int Height { get; } = 1 + entries.Select(e => e.Value.Height).DefaultIfEmpty().Max();

    public override Sentence What => Sentence.Of("common.node.map");

    /// <summary>The entry of a key, merged in or not.</summary>
    public MapEntry? Entry(string key) => Entries.FirstOrDefault(e => e.Key.Text == key);

    /// <summary>The entry of a key written in the map itself, where it can be changed.</summary>
    public MapEntry? WrittenEntry(string key) => Written.FirstOrDefault(e => e.WrittenName == key);
}
