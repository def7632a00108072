using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of school.yaml, which are a production's own wherever they can be.</summary>
static class DepartmentKeys
{
    public static readonly MapsKey Labs = new("labs", SchoolLabKeys.Table, "The labs that the school works with.");
    public static readonly ValuesKey<DateOnly> Holidays = new("holidays", TimeForms.Date, "Days on which the store is closed.")
    {
        Example = "[2026-10-03]",
    };
    public static readonly ValueKey<decimal> Budget = new(
        "budget",
        NumberForms.Money,
        "What one production may cost, in the currency of its rates."
    )
    {
        Example = "900",
    };
    public static readonly ValueKey<string> Language = new(
        "language",
        WordForms.Language,
        "The language of the school's own papers; en unless written."
    )
    {
        Example = "en",
    };
    public static readonly ValueKey<LengthUnit> Units = new(
        "units",
        WordForms.Unit,
        "The unit of the school's own papers; feet unless written."
    )
    {
        Example = "feet",
    };
    public static readonly MapsKey Loans = new("loans", KitLoanKeys.Table, "What is lent to which production, and for how long.");

    public static readonly KeyTable Table = new(
        Sentence.Of("common.owner.school-file"),
        [
            FileKeys.Version,
            ProductionKeys.School,
            ProductionKeys.People,
            FileKeys.Lots,
            FileKeys.Bodies,
            FileKeys.Lenses,
            FileKeys.Filters,
            FileKeys.Meters,
            FileKeys.Motors,
            FileKeys.Items,
            Labs,
            Holidays,
            Budget,
            Language,
            Units,
            Loans,
        ]
    );
}
