using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Lines;

/// <summary>The findings of lines of the short form. Entry reports them under the same names; a test compares the two lists.</summary>
static class LineCheckList
{
    /// <summary>All of them.</summary>
    public static ImmutableArray<Check> All { get; } =
    [
        Of("line/bad-value"),
        Of("line/needs"),
        Of("line/said-twice"),
        Of("line/two-readings"),
        Of("line/unknown-name"),
        Of("line/unreadable"),
    ];

    static StageCheck Of(string name) => new(name, Level.Error, Round.Saying);
}
