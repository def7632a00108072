using System.Collections.Immutable;
using Spoolbook.Reading.Keys;

namespace Spoolbook.Reading.Editing;

/// <summary>The keys of everything that happens to a roll, from the tables that the reader uses.</summary>
public static class EntryTables
{
    public static EntryTable Take { get; } = Of(LogKeys.Take);

    public static EntryTable Rewind { get; } = Of(LogKeys.Rewind);

    public static EntryTable RunOff { get; } = Of(LogKeys.RunOff);

    /// <summary>An opened door.</summary>
    public static EntryTable Fog { get; } = Of(LogKeys.Fog);

    public static EntryTable Wind { get; } = Of(LogKeys.Wind);

    public static EntryTable Remark { get; } = Of(LogKeys.Remark);

    public static EntryTable Reload { get; } = Of(LogKeys.Reload);

    /// <summary>Loading, with the keys of the roll itself.</summary>
    public static EntryTable Load { get; } = new(RollKeys.Load.Name, RollKeys.Table, LoadKeys.Table);

    /// <summary>Unloading, with the boxes at the foot of the paper sheet.</summary>
    public static EntryTable Unload { get; } = new(RollKeys.Unload.Name, UnloadKeys.Table, TotalsKeys.Table);

    public static ImmutableArray<EntryTable> OfLog => [Take, Rewind, RunOff, Fog, Wind, Remark, Reload];

    /// <summary>Whether a key of <see cref="Load"/> belongs to the roll itself and not under <c>load:</c>.</summary>
    public static bool IsOfRoll(string key) => RollKeys.Table.Find(key) is not null;

    /// <summary>The key under <c>totals:</c> that a key of <see cref="Unload"/> is; null where it belongs under <c>unload:</c>.</summary>
    public static string? TotalsKeyOf(string key) =>
        key == EntryTable.ShortEndBox ? TotalsKeys.ShortEnd.Name
        : UnloadKeys.Table.Find(key) is null ? TotalsKeys.Table.Find(key)?.Name
        : null;

    static EntryTable Of(EntryKind kind) => new(kind.Word, kind.Table);
}
