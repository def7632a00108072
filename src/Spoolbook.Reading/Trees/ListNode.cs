using System.Collections.Immutable;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Trees;

/// <summary>A list, in brackets or on lines of its own.</summary>
sealed class ListNode(Place place, int start, int end, bool inBrackets, ImmutableArray<Node> written) : Node(place, start, end)
{
    /// <summary>The items as written: an alias is itself.</summary>
    public ImmutableArray<Node> Written { get; } = written;

    /// <summary>The items as meant: an alias is what it repeats.</summary>
    public ImmutableArray<Node> Items { get; } = written.Any(n => n is AliasNode) ? [.. written.Select(n => n.Meant)] : written;

    public bool InBrackets { get; } = inBrackets;

    public override long Weight { get; } = 1 + written.Sum(i => i.Weight);

    public override int Height { get; } = 1 + written.Select(i => i.Height).DefaultIfEmpty().Max();

    public override Sentence What => Sentence.Of("common.node.list");
}
