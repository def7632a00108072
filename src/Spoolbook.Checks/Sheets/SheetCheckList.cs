using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Sheets;

/// <summary>The findings of reading. Reading reports them under the same names; a test compares the two lists.</summary>
static class SheetCheckList
{
    /// <summary>All of them.</summary>
    public static ImmutableArray<Check> All { get; } =
    [
        Of("roll/gone"),
        Of("roll/number-skipped", Level.Warning),
        Of("sheet/bad-character"),
        Of("sheet/bad-choice"),
        Of("sheet/bad-code"),
        Of("sheet/bad-colour"),
        Of("sheet/bad-date"),
        Of("sheet/bad-distance"),
        Of("sheet/bad-duration"),
        Of("sheet/bad-fraction"),
        Of("sheet/bad-length"),
        Of("sheet/bad-number"),
        Of("sheet/bad-picture"),
        Of("sheet/bad-speed"),
        Of("sheet/bad-stop"),
        Of("sheet/bad-time"),
        Of("sheet/duplicate-key"),
        Of("sheet/duplicate-name"),
        Of("sheet/missing-file"),
        Of("sheet/missing-key"),
        Of("sheet/names-alike"),
        Of("sheet/not-read"),
        Of("sheet/not-yaml"),
        Of("sheet/text-cut", Level.Warning),
        Of("sheet/too-deep"),
        Of("sheet/too-large"),
        Of("sheet/unknown-key"),
        Of("sheet/unknown-reference"),
        Of("sheet/unreadable-file"),
        Of("sheet/unsupported-version"),
        Of("sheet/written-twice"),
        Of("sheet/wrong-kind"),
    ];

    static StageCheck Of(string name, Level level = Level.Error) => new(name, level, Round.Reading);
}
