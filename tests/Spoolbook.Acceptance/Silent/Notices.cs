namespace Spoolbook.Acceptance.Silent;

/// <summary>All that is said of a production: findings, and what was not looked at.</summary>
sealed class Notices
{
    readonly HashSet<(string Check, string Message, string? Roll, string? Take)> _findings;
    readonly Dictionary<string, int> _open;

    Notices(CheckedProduction found)
    {
        _findings = [.. found.Findings.Concat(found.Waived.Select(w => w.Finding)).Select(f => (f.Check, f.Message, f.Roll, f.Take))];
        _open = found.NotLookedAt.ToDictionary(n => n.Question, n => n.Places.Length, StringComparer.Ordinal);
    }

    public static Notices Of(CheckedProduction found) => new(found);

    /// <summary>What the changed production brings that this one does not, and its name.</summary>
    public (Outcome Outcome, string By) Against(Notices changed)
    {
        if (
            changed._findings.Where(f => !_findings.Contains(f)).Select(f => f.Check).Order(StringComparer.Ordinal).FirstOrDefault() is
            { } check
        )
        {
            return (Outcome.Finding, check);
        }

        // One place more, of those that are missing, names the place of the change.
        return changed._open.Where(o => o.Value > _open.GetValueOrDefault(o.Key)).Select(o => o.Key).FirstOrDefault() is { } question
            ? (Outcome.Open, "not looked at: " + question)
            : (Outcome.Silent, "");
    }
}
