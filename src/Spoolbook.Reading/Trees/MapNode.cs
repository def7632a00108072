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

    public override long Weight { get; } = WeightOf(entries);

    public override int Height { get; } = HeightOf(entries);

    public override Sentence What => Sentence.Of("common.node.map");

    /// <summary>The entry of a key, merged in or not.</summary>
    public MapEntry? Entry(string key)
    {
        // Asked for every key that a map can have, so without a closure for each.
        foreach (var entry in Entries)
        {
            if (entry.Key.Text == key)
            {
                return entry;
            }
        }

        return null;
    }

    /// <summary>The entry of a key written in the map itself, where it can be changed.</summary>
    public MapEntry? WrittenEntry(string key) => Written.FirstOrDefault(e => e.WrittenName == key);

    // Each map of a file is weighed as it is read, so without a query for each.
    static long WeightOf(ImmutableArray<MapEntry> entries)
    {
        var weight = 1L;
        foreach (var entry in entries)
        {
            weight += 1 + entry.Value.Weight;
        }

        return weight;
    }

    static int HeightOf(ImmutableArray<MapEntry> entries)
    {
        var highest = 0;
        foreach (var entry in entries)
        {
            highest = Math.Max(highest, entry.Value.Height);
        }

        return 1 + highest;
    }
}
