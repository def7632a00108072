using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>Names that only one thing may have.</summary>
static class Names
{
    public static void Check(Production production, FindingList findings)
    {
        Once(findings, "sheet/duplicate-name.message.lot", production.Lots.Select(l => l.Name));
        Once(findings, "sheet/duplicate-name.message.body", production.Bodies.Select(b => b.Name));
        Once(findings, "sheet/duplicate-name.message.lens", production.Lenses.Select(l => l.Name));
        Once(findings, "sheet/duplicate-name.message.filter", production.Filters.Select(f => f.Name));
        Once(findings, "sheet/duplicate-name.message.meter", production.Meters.Select(m => m.Name));
        Once(findings, "sheet/duplicate-name.message.motor", production.Motors.Select(m => m.Name));
        Once(findings, "sheet/duplicate-name.message.person", production.People.Select(p => p.Id));
        Once(findings, "sheet/duplicate-name.message.shooting-day", production.Days.Select(d => d.Number));
        Once(
            findings,
            "sheet/duplicate-name.message.shot",
            production.Shots.Select(s => new Located<string>(s.Name, (s.Shot ?? s.Scene).Place))
        );
        Once(findings, "sheet/duplicate-name.message.rate", production.Rates?.Processes.Select(p => p.Process) ?? []);
        foreach (var body in production.Bodies)
        {
            Once(findings, "sheet/duplicate-name.message.shutter-mark", body.ShutterMarks.Select(m => m.Name));
        }

        foreach (var roll in production.Rolls.GroupBy(r => r.Name.Value, StringComparer.Ordinal))
        {
            findings.Roll = roll.Key;
            Once(findings, "sheet/duplicate-name.message.roll", roll.Select(r => r.Name));
        }

        findings.Roll = null;
    }

    /// <summary>The same of a school's file.</summary>
    public static void Check(Department school, FindingList findings)
    {
        Once(findings, "sheet/duplicate-name.message.lot", school.Lots.Select(l => l.Name));
        Once(findings, "sheet/duplicate-name.message.body", school.Bodies.Select(b => b.Name));
        Once(findings, "sheet/duplicate-name.message.lens", school.Lenses.Select(l => l.Name));
        Once(findings, "sheet/duplicate-name.message.filter", school.Filters.Select(f => f.Name));
        Once(findings, "sheet/duplicate-name.message.meter", school.Meters.Select(m => m.Name));
        Once(findings, "sheet/duplicate-name.message.motor", school.Motors.Select(m => m.Name));
        Once(findings, "sheet/duplicate-name.message.person", school.People.Select(p => p.Id));
    }

    static void Once<T>(FindingList findings, string message, IEnumerable<Located<T>> names)
        where T : notnull
    {
        var first = new Dictionary<T, Place>();
        foreach (var name in names)
        {
            if (!first.TryAdd(name.Value, name.Place))
            {
                findings.Add(
                    SheetChecks.DuplicateName,
                    Sentence.Of(message, ("name", Quote.Short($"{name.Value}"))),
                    name.Place,
                    Sentence.Of("sheet/duplicate-name.help"),
                    (first[name.Value], Sentence.Of("sheet/duplicate-name.other"))
                );
            }
        }
    }
}
