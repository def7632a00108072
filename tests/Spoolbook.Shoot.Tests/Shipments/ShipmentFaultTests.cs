using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Shipments;
using Spoolbook.Shoot.Tests.Money;
using Spoolbook.Shoot.Tests.Sheets;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Shipments;

public class ShipmentFaultTests
{
    static SchoolProduction Production(string code, string roll, Func<Lab, Lab>? lab = null)
    {
        var production = SmallProduction.Of(PricedProduction.Shot(100, roll));
        var harbour = new Lab(default) { Name = Written("Harbour Film Lab") };
        return new SchoolProduction(
            code.ToLowerInvariant(),
            Books.Of(
                production with
                {
                    Code = Written(code),
                    Title = Written($"Production {code}"),
                    Lab = lab is null ? harbour : lab(harbour),
                }
            ),
            HasErrors: false
        );
    }

    static ShipmentPlan Plan(IReadOnlyList<ShipmentRecord> earlier, params SchoolProduction[] school) =>
        ShipmentPlan.Make(school, earlier, new ShipmentWishes(new DateOnly(2026, 10, 16)));

    [Fact]
    public void Two_sound_productions_go_without_a_word() =>
        Assert.Empty(Plan([], Production("HERON", "R01"), Production("FERRY", "R01")).Faults);

    [Theory]
    [InlineData("HERON", "her-on")]
    [InlineData("HER", "HERO", "ON1", "N1")]
    public void Cans_that_read_alike_stop_a_consignment(string one, string other, string oneRoll = "R01", string otherRoll = "R02") =>
        Assert.True(Plan([], Production(one, oneRoll), Production(other, otherRoll)).HasErrors);

    [Fact]
    public void A_code_that_another_production_shipped_under_is_no_reason_to_leave_a_roll_here_in_silence()
    {
        var before = AnySchool.RecordOf(Plan([], Production("HERON", "R01")).Shipments[0]);
        var other = Production("HERON", "R01") with { Folder = "next-term/heron" };
        var renamed = other with { Books = Books.Of(other.Books.Production with { Title = Written("Another Heron") }) };

        Assert.Empty(Plan([before], other).Faults);
        Assert.Contains("went on 2026-10-16 already", Assert.Single(Plan([before], renamed).Faults).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_production_without_a_lab_keeps_its_rolls_here()
    {
        var plan = Plan([], Production("HERON", "R01", lab => lab with { Name = null }));

        Assert.Empty(plan.Shipments);
        Assert.Equal(LeftOutReason.NoLab, Assert.Single(plan.LeftOut).Reason);
    }
}
