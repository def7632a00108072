using System.Collections.Immutable;
using Spoolbook.Reading.Keys;

namespace Spoolbook.Reading.Editing;

/// <summary>The keys of everything that happens to a roll, out of the tables that the reader looks at.</summary>
public static class EntryTables
{
    /// <summary>A take.</summary>
    public static EntryTable Take { get; } = Of(LogKeys.Take);

    /// <summary>A rewind.</summary>
    public static EntryTable Rewind { get; } = Of(LogKeys.Rewind);

    /// <summary>A run-off.</summary>
    public static EntryTable RunOff { get; } = Of(LogKeys.RunOff);

    /// <summary>An open door.</summary>
    public static EntryTable Fog { get; } = Of(LogKeys.Fog);

    /// <summary>A winding of the spring.</summary>
    public static EntryTable Wind { get; } = Of(LogKeys.Wind);

    /// <summary>A remark.</summary>
    public static EntryTable Remark { get; } = Of(LogKeys.Remark);

    /// <summary>A reload.</summary>
    public static EntryTable Reload { get; } = Of(LogKeys.Reload);

    /// <summary>Loading, with the keys of the roll itself.</summary>
    public static EntryTable Load { get; } = new(RollKeys.Load.Name, RollKeys.Table, LoadKeys.Table);

    /// <summary>Unloading.</summary>
    public static EntryTable Unload { get; } = new(RollKeys.Unload.Name, UnloadKeys.Table);

    /// <summary>The entries of a log.</summary>
    public static ImmutableArray<EntryTable> OfLog => [Take, Rewind, RunOff, Fog, Wind, Remark, Reload];

    /// <summary>Whether a key that <see cref="Load"/> has is the roll's own, and not one under <c>load:</c>.</summary>
    public static bool IsOfRoll(string key) => RollKeys.Table.Find(key) is not null;

    static EntryTable Of(EntryKind kind) => new(kind.Word, kind.Table);
}
