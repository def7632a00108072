using System.Collections.Immutable;
using Spoolbook.Entry.Tables;

namespace Spoolbook.Entry.Takes;

/// <summary>One row of the table: a take's cells by column, without the empty ones.</summary>
sealed record TakeRow(int Number, string Address, ImmutableDictionary<TakeColumn, Cell> Cells, TakeTable Table)
{
    /// <summary>Its cells under the names of keys that have no column of their own, without the empty ones.</summary>
    public ImmutableDictionary<string, Cell> Keys { get; init; } = ImmutableDictionary<string, Cell>.Empty;

    public Cell? this[TakeColumn column] => Cells.GetValueOrDefault(column);

    /// <summary>The words of a cell, trimmed; empty for an empty cell.</summary>
    public string Text(TakeColumn column) => this[column]?.Text.Trim() ?? "";

    /// <summary>The address of a cell, empty or not; the row's where the table has no such column.</summary>
    public string Where(TakeColumn column) => Table.Where(Number, column) ?? Address;

    public string Roll => Text(TakeColumn.Roll);

    /// <summary>The take's slate: scene, shot, number.</summary>
    public (string Scene, string Shot, string Take) Slate => (Text(TakeColumn.Scene), Text(TakeColumn.Shot), Text(TakeColumn.Take));

    /// <summary>The slate as spoken: <c>7B/1</c>.</summary>
    public string Said => $"{Slate.Scene}{Slate.Shot}/{Slate.Take}";
}
