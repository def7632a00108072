using System.Collections.Immutable;

namespace Spoolbook.Reading.Keys;

/// <summary>All tables of keys, found by following them down from the files.</summary>
static class KeyTables
{
    /// <summary>Each table once, a file's own before those inside it.</summary>
    public static ImmutableArray<KeyTable> All { get; } =
    [.. Under(FileKeys.Whole, FileKeys.Stock, FileKeys.Kit, FileKeys.Roll, DepartmentKeys.Table)];

    /// <summary>Some tables and all those inside them, each once.</summary>
    public static IEnumerable<KeyTable> Under(params ImmutableArray<KeyTable> roots)
    {
        var seen = new HashSet<KeyTable>(ReferenceEqualityComparer.Instance);
        var waiting = new Queue<KeyTable>(roots);
        while (waiting.TryDequeue(out var table))
        {
            if (seen.Add(table))
            {
                yield return table;
                foreach (var inner in table.Keys.SelectMany(In))
                {
                    waiting.Enqueue(inner);
                }
            }
        }
    }

    static IEnumerable<KeyTable> In(Key key) =>
        key switch
        {
            MapKey map => [map.Table],
            MapsKey maps => [maps.Table],
            EntriesKey entries => entries.Kinds.Select(k => k.Table),
            _ => [],
        };
}
