using System.Collections.Immutable;

namespace Spoolbook.Entry;

/// <summary>Something that keeps a table from being taken in, or that is worth saying about it.</summary>
/// <param name="Where">The cell's address, <c>Takes!F12</c> or <c>takes.csv:12:F</c>; the row's or the file's where it is about no cell.</param>
/// <param name="Message">What is wrong, in one sentence.</param>
/// <param name="Help">What to write instead.</param>
public sealed record Objection(string Where, string Message, string Help);

/// <summary>What keeps a table from being read at all. Thrown and caught within this room alone.</summary>
sealed class TableFault(Objection objection) : Exception(objection.Message)
{
    public TableFault(string where, string message, string help)
        : this(new Objection(where, message, help))
    {
    }

    public Objection Objection { get; } = objection;
}

/// <summary>Objections as they come in.</summary>
sealed class Objections
{
    readonly List<Objection> _all = [];

    public int Count => _all.Count;

    public void Add(string where, string message, string help) => _all.Add(new Objection(where, message, help));

    public ImmutableArray<Objection> All => [.. _all];
}
