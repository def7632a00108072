using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Trees;

/// <summary>A piece of YAML and where it stands.</summary>
abstract class Node(Place place)
{
    public Place Place { get; } = place;

    /// <summary>Pieces in it, itself among them, with everything counted again wherever an alias repeats it.</summary>
    public abstract long Weight { get; }

    /// <summary>How many lists and maps lie in one another in it; 0 for a value.</summary>
    public abstract int Height { get; }

    /// <summary>What it is, in the words of a message.</summary>
    public abstract string What { get; }
}

/// <summary>A value: always text, whatever it looks like.</summary>
sealed class ScalarNode(Place place, string text, bool isBlank) : Node(place)
{
    public string Text { get; } = text;

    /// <summary>Nothing, <c>~</c> or <c>null</c> without quotes: as if it were not written.</summary>
    public bool IsBlank { get; } = isBlank;

    public override long Weight => 1;

    public override int Height => 0;

    public override string What => IsBlank ? "nothing" : "a single value";
}

/// <summary>A list.</summary>
sealed class ListNode(Place place, ImmutableArray<Node> items) : Node(place)
{
    public ImmutableArray<Node> Items { get; } = items;

    public override long Weight { get; } = 1 + items.Sum(i => i.Weight);

    public override int Height { get; } = 1 + items.Select(i => i.Height).DefaultIfEmpty().Max();

    public override string What => "a list";
}

/// <summary>A map: keys in the order in which they are written, each once.</summary>
sealed class MapNode(Place place, ImmutableArray<MapEntry> entries) : Node(place)
{
    public ImmutableArray<MapEntry> Entries { get; } = entries;

    /// <summary>Whether it stands between brackets, where a comma ends a value.</summary>
    public bool InBrackets { get; init; }

    public override long Weight { get; } = 1 + entries.Sum(e => 1 + e.Value.Weight);

    public override int Height { get; } = 1 + entries.Select(e => e.Value.Height).DefaultIfEmpty().Max();

    public override string What => "a map of keys and values";

    public MapEntry? Entry(string key) => Entries.FirstOrDefault(e => e.Key.Text == key);
}

/// <summary>A key and what is written after it.</summary>
sealed record MapEntry(ScalarNode Key, Node Value);
