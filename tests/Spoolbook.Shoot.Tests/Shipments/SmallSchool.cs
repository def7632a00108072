using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Shipments;
using Spoolbook.Shoot.Tests.Money;
using Spoolbook.Shoot.Tests.Sheets;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Shipments;

/// <summary>Productions of a school, each in a folder of its code, that send what they shot to the Harbour Film Lab.</summary>
static class SmallSchool
{
    public static ShipmentWishes Friday { get; } = new(new DateOnly(2026, 10, 16));

    /// <summary>A production with these rolls; one roll of 100 ft, shot to its end, unless given.</summary>
    public static SchoolProduction Production(string code, params Sheet[] sheets) =>
        new(
            code.ToLowerInvariant(),
            Books.Of(
                SmallProduction.Of(sheets.Length == 0 ? [PricedProduction.Shot(100)] : sheets) with
                {
                    Code = Written(code),
                    Title = Written($"Production {code}"),
                    Lab = new Lab(default) { Name = Written("Harbour Film Lab") },
                }
            ),
            HasErrors: false
        );

    public static SchoolProduction With(this SchoolProduction production, Func<Production, Production> change) =>
        production with
        {
            Books = Books.Of(change(production.Books.Production)),
        };

    public static SchoolProduction WithLab(this SchoolProduction production, Func<Lab, Lab?> change) =>
        production.With(p => p with { Lab = change(p.Lab!) });

    public static SchoolProduction SendsTo(this SchoolProduction production, string lab) =>
        production.WithLab(l => l with { Name = Written(lab) });

    public static SchoolProduction Priced(this SchoolProduction production, Func<Rates, Rates>? change = null) =>
        production.With(p => p with { Rates = change is null ? PricedProduction.Full : change(PricedProduction.Full) });

    public static ShipmentPlan Plan(params SchoolProduction[] school) => ShipmentPlan.Make(school, [], Friday);

    /// <summary>The record of the only consignment of a plan.</summary>
    public static ShipmentRecord Record(params SchoolProduction[] school) => AnySchool.RecordOf(Plan(school).Shipments.Single());

    /// <summary>The only finding of a check, which must say what to do.</summary>
    public static Finding Only(this ShipmentPlan plan, string check)
    {
        var finding = Assert.Single(plan.Faults, f => f.Check == check);
        Assert.NotEmpty(finding.Help);
        return finding;
    }
}
