using System.Collections.Immutable;

namespace Spoolbook.Entry;

/// <summary>Collects objections in the order they are found.</summary>
sealed class Objections
{
    readonly List<Objection> _all = [];

    public int Count => _all.Count;

    public void Add(string where, string message, string help) => _all.Add(new Objection(where, message, help));

    public ImmutableArray<Objection> All => [.. _all];
}
