using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Papers;

/// <summary>The findings of printing. Papers reports them under the same names; a test compares the two lists.</summary>
static class PaperCheckList
{
    /// <summary>All of them.</summary>
    public static ImmutableArray<Check> All { get; } =
    [
        Of("paper/does-not-fit", Level.Warning),
        Of("paper/language", Level.Warning),
        Of("paper/logo", Level.Error),
        Of("paper/missing-glyph", Level.Warning),
        Of("paper/no-such-label", Level.Warning),
        Of("paper/right-to-left", Level.Warning),
        Of("paper/template", Level.Error),
        Of("paper/words", Level.Warning),
    ];

    static StageCheck Of(string name, Level level) => new(name, level, Round.Printing);
}
