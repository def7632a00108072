using System.Collections.Immutable;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Ruling;

/// <summary>
/// The levels that a production sets for itself. They are applied last: they change how loud a finding is, not what is
/// checked.
/// </summary>
public static class HouseLevels
{
    // Findings on reading, on rules and waivers, and on our own faults keep their level.
    static readonly ImmutableArray<string> AboutSheet = ["sheet", "line", "accept", "rules"];
    static readonly ImmutableArray<string> AboutProgram = ["spoolbook"];

    // Without these no paper can be printed, whatever the rules say.
    static readonly ImmutableArray<string> KeepFromPrinting = ["paper/logo", "paper/template"];

    /// <summary>Whether rules and waivers cannot touch a check or a group.</summary>
    public static bool IsFixed(string name) =>
        IsAboutSheet(name) || IsAboutProgram(name) || KeepFromPrinting.Contains(name) || KeepsFromShipping(name);

    /// <summary>Whether a check or a group is about the sheet itself, or its rules and waivers.</summary>
    internal static bool IsAboutSheet(string name) => AboutSheet.Contains(name.Split('/')[0]);

    /// <summary>Whether a check or a group is about a mistake of ours.</summary>
    internal static bool IsAboutProgram(string name) => AboutProgram.Contains(name.Split('/')[0]);

    /// <summary>Whether no consignment goes while a check finds something: the lab would mix up or send back a can.</summary>
    internal static bool KeepsFromShipping(string name) => CheckList.Named(name) is { Round: Round.Shipping, Level: Level.Error };

    /// <summary>Whether a finding keeps its level: its check is fixed, or it is what keeps a paper from being printed.</summary>
    internal static bool IsFixed(Finding finding) =>
        IsFixed(finding.Check) || (finding.Level == Level.Error && CheckList.Named(finding.Check)?.Round == Round.Printing);

    /// <summary>Findings at the levels that the production sets; those that it turns off are left out.</summary>
    internal static IEnumerable<Finding> Given(IEnumerable<Finding> findings, Production production) =>
        production.Rules is not { Levels.Length: > 0 } rules
            ? findings
            : from finding in findings
              let rule = IsFixed(finding) ? null : For(finding.Check, rules)
              where rule is null or { Level.Value: not null }
              select rule?.Level.Value is { } level ? finding with { Level = level } : finding;

    /// <summary>Whether the production turns a check off.</summary>
    internal static bool IsOff(string check, Production production) =>
        production.Rules is { } rules && For(check, rules) is { Level.Value: null };

    /// <summary>What the production's rules change, by name: levels check by check, then tolerances.</summary>
    public static ImmutableArray<RuleChange> Changes(Production production)
    {
        if (production.Rules is not { } rules)
        {
            return [];
        }

        var levels =
            from check in CheckList.All.OrderBy(c => c.Name, StringComparer.Ordinal)
            let rule = For(check.Name, rules)
            where rule is not null && rule.Level.Value != check.Level
            select new LevelChange(check.Name, check.Level, rule.Level.Value);
        var tolerances =
            from tolerance in Tolerances.All
            let rule = rules.Tolerances.FirstOrDefault(t => t.Name.Value == tolerance.Name)
            let set = rule is null ? null : tolerance.Rewritten(rule.Value.Value, production.Gauge)
            where set is not null && set != tolerance.UsualText
            select new ToleranceChange(tolerance.Name, tolerance.UsualText, rule.Value.Value);
        return [.. levels, .. tolerances];
    }

    // A check's own line beats its group's, in any order.
    static LevelRule? For(string check, HouseRules rules) =>
        IsFixed(check)
            ? null
            : rules.Levels.FirstOrDefault(l => l.Name.Value == check)
                ?? rules.Levels.FirstOrDefault(l => l.Name.Value == check.Split('/')[0]);
}
