using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>Names that must be given once.</summary>
static class Names
{
    public static void Check(Production production, FindingList findings)
    {
        Once(findings, "lot", production.Lots.Select(l => l.Name));
        Once(findings, "body", production.Bodies.Select(b => b.Name));
        Once(findings, "lens", production.Lenses.Select(l => l.Name));
        Once(findings, "filter", production.Filters.Select(f => f.Name));
        Once(findings, "meter", production.Meters.Select(m => m.Name));
        Once(findings, "motor", production.Motors.Select(m => m.Name));
        Once(findings, "person", production.People.Select(p => p.Id));
        Once(findings, "shooting day", production.Days.Select(d => d.Number));
        Once(findings, "shot", production.Shots.Select(s => new Located<string>(s.Name, (s.Shot ?? s.Scene).Place)));
        Once(findings, "rate for the process", production.Rates?.Processes.Select(p => p.Process) ?? []);
        foreach (var body in production.Bodies)
        {
            Once(findings, "shutter mark", body.ShutterMarks.Select(m => m.Name));
        }

        foreach (var roll in production.Rolls.GroupBy(r => r.Name.Value, StringComparer.Ordinal))
        {
            findings.Roll = roll.Key;
            Once(findings, "roll", roll.Select(r => r.Name));
        }

        findings.Roll = null;
    }

    static void Once<T>(FindingList findings, string what, IEnumerable<Located<T>> names)
        where T : notnull
    {
        var first = new Dictionary<T, Place>();
        foreach (var name in names)
        {
            if (!first.TryAdd(name.Value, name.Place))
            {
                findings.Add(
                    SheetChecks.DuplicateName,
                    $"There are two entries for the {what} `{Quote.Short($"{name.Value}")}`.",
                    name.Place,
                    "Give one of them another name, or delete it.",
                    (first[name.Value], "first used here")
                );
            }
        }
    }
}
