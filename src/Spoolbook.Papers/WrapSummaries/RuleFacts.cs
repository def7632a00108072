using System.Collections.Immutable;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>A level or a tolerance that the production sets for itself.</summary>
public sealed record RuleFacts(string Name, string Usual, string Set)
{
    internal static ImmutableArray<RuleFacts> Of(ImmutableArray<RuleChange> changes, PaperFormat format) =>
        [.. changes.Select(c => Of(c, format))];

    static RuleFacts Of(RuleChange change, PaperFormat format) =>
        change switch
        {
            LevelChange level => new(level.Name, Word(level.Usual, format), Word(level.Set, format)),
            ToleranceChange tolerance => new(tolerance.Name, tolerance.Usual, tolerance.Set),
            _ => throw new ArgumentException($"No words for {change}.", nameof(change)),
        };

    static string Word(Level? level, PaperFormat format) => format.Words["level-" + (level?.ToString().ToLowerInvariant() ?? "off")];
}
