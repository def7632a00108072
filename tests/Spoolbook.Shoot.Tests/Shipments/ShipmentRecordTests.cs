using Spoolbook.Shoot.Shipments;
using Spoolbook.Shoot.Tests.Money;
using static Spoolbook.Shoot.Tests.Shipments.SmallSchool;

namespace Spoolbook.Shoot.Tests.Shipments;

public class ShipmentRecordTests
{
    static readonly DateOnly Monday = new(2026, 10, 26);

    static readonly ShipmentRecord Sent = Record(
        Production("HERON", PricedProduction.Shot(100, "R01"), PricedProduction.Shot(100, "R02"), PricedProduction.Shot(100, "R03"))
    );

    static ShipmentRecord Back(params int[] cans) =>
        Sent with
        {
            BackBy = Monday,
            Received = [.. cans.Select(n => new CanReturn(default, Sent.Cans[n - 1].Code, Monday))],
        };

    [Fact]
    public void Cans_that_have_not_come_back_are_missing_in_packing_order()
    {
        Assert.Equal([1, 2, 3], Back().Missing.Select(c => c.Number));
        Assert.Equal([1, 3], Back(2).Missing.Select(c => c.Number));
        Assert.Empty(Back(3, 1, 2).Missing);
    }

    [Fact]
    public void A_consignment_is_overdue_from_the_day_after_the_last_while_a_can_is_missing()
    {
        Assert.False(Back(1).IsOverdue(Monday));
        Assert.True(Back(1).IsOverdue(Monday.AddDays(1)));
        Assert.False(Back(1, 2, 3).IsOverdue(Monday.AddDays(1)));
        Assert.False(Sent.IsOverdue(Monday.AddYears(1)));
    }

    [Fact]
    public void The_last_word_on_a_can_counts()
    {
        var can = Sent.Cans[0];
        CanReturn As(CanState state) => new(default, can.Code, Monday) { State = state };
        Assert.True((Sent with { Received = [As(CanState.GoesOn), As(CanState.Processed)] }).Holds(can));
        Assert.False((Sent with { Received = [As(CanState.Processed), As(CanState.Unprocessed)] }).Holds(can));
    }
}
