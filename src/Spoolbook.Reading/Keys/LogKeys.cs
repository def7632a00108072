using System.Collections.Immutable;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

/// <summary>The kinds of entry in a log.</summary>
static class LogKeys
{
    public static readonly EntryKind Take = new("take", TakeKeys.Table, EntryShort.None, "Film run with the shutter working.");
    public static readonly EntryKind Rewind = new("rewind", RewindKeys.Table, EntryShort.None, "Film wound back for another pass.");
    public static readonly EntryKind RunOff = new("run-off", RunOffKeys.Table, EntryShort.None, "Film run without a picture.");
    public static readonly EntryKind Fog = new("fog", FogKeys.Table, EntryShort.None, "The door was opened in the light.");
    public static readonly EntryKind Wind = new(
        "wind",
        new KeyTable(Sentence.Of("common.owner.wind"), EntryKeys.Common),
        EntryShort.Full,
        "The spring was wound to the full."
    );
    public static readonly EntryKind Remark = new(
        "note",
        new KeyTable(Sentence.Of("common.owner.note"), EntryKeys.Common),
        EntryShort.Words,
        "Something to remember, with no film run."
    );
    public static readonly EntryKind Reload = new(
        "reload",
        ReloadKeys.Table,
        EntryShort.None,
        "The half-shot roll was unloaded and rethreaded."
    );

    public static readonly ImmutableArray<EntryKind> Kinds = [Take, Rewind, RunOff, Fog, Wind, Remark, Reload];
}
