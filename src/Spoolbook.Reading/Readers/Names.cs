using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>Names that only one thing may have.</summary>
static class Names
{
    public static void Check(Production production, FindingList findings)
    {
        Shared(
            findings,
            production.Lots,
            production.Bodies,
            production.Lenses,
            production.Filters,
            production.Meters,
            production.Motors,
            production.People
        );
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
    public static void Check(Department school, FindingList findings) =>
        Shared(findings, school.Lots, school.Bodies, school.Lenses, school.Filters, school.Meters, school.Motors, school.People);

    // What a production has of its own or takes from its school.
    static void Shared(
        FindingList findings,
        IEnumerable<StockLot> lots,
        IEnumerable<Body> bodies,
        IEnumerable<Lens> lenses,
        IEnumerable<Filter> filters,
        IEnumerable<LightMeter> meters,
        IEnumerable<Motor> motors,
        IEnumerable<Person> people
    )
    {
        Once(findings, "sheet/duplicate-name.message.lot", lots.Select(l => l.Name));
        Once(findings, "sheet/duplicate-name.message.body", bodies.Select(b => b.Name));
        Once(findings, "sheet/duplicate-name.message.lens", lenses.Select(l => l.Name));
        Once(findings, "sheet/duplicate-name.message.filter", filters.Select(f => f.Name));
        Once(findings, "sheet/duplicate-name.message.meter", meters.Select(m => m.Name));
        Once(findings, "sheet/duplicate-name.message.motor", motors.Select(m => m.Name));
        Once(findings, "sheet/duplicate-name.message.person", people.Select(p => p.Id));
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
