using System.Collections.Immutable;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook;

/// <summary>The findings that a change of the record brings.</summary>
internal static class NewFindings
{
    /// <summary>Those that were not there before.</summary>
    public static ImmutableArray<Finding> In(ImmutableArray<Finding> after, ImmutableArray<Finding> before)
    {
        // An old finding may have moved by a line: the same words about the same roll and take are the same finding.
        var left = before.GroupBy(Key).ToDictionary(g => g.Key, g => g.Count());
        return [.. after.Where(f => !(left.TryGetValue(Key(f), out var count) && (left[Key(f)] = count - 1) >= 0))];
    }

    static (string, Level, string, string, string?, string?) Key(Finding f) => (f.Check, f.Level, f.Message, f.Place.File, f.Roll, f.Take);
}
