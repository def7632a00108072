using CsCheck;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Shipments;

namespace Spoolbook.Shoot.Tests.Shipments;

public class ShipmentLawTests
{
    static readonly Gen<(IReadOnlyList<SchoolProduction> School, ShipmentWishes Wishes)> Any = Gen.Select(
        AnySchool.Productions,
        AnySchool.Wishes
    );

    [Fact]
    public void Every_exposed_can_that_waits_goes_in_one_consignment_and_no_other_can_does() =>
        Any.Sample(
            (school, wishes) =>
            {
                var plan = ShipmentPlan.Make(school, [], wishes);
                var waits =
                    from production in school
                    where production.Books.Production.Lab!.Name is not null
                    from roll in production.Books.Shoot.Sent
                    where production.Books.Production.SentOn(roll.Roll) is null
                    select (production.Folder, roll.Roll.Name.Value);
                Assert.Equal(
                    waits.Order(),
                    plan.Shipments.SelectMany(s => s.Cans).Select(c => (c.Production.Folder, c.Roll.Roll.Name.Value)).Order()
                );
            }
        );

    [Fact]
    public void What_went_does_not_go_again_until_it_comes_back_unprocessed() =>
        Any.Sample(
            (school, wishes) =>
            {
                List<ShipmentRecord> records = [.. ShipmentPlan.Make(school, [], wishes).Shipments.Select(AnySchool.RecordOf)];
                Assert.Empty(ShipmentPlan.Make(school, records, wishes).Shipments);
                if (records.Count == 0)
                {
                    return;
                }

                var can = records[0].Cans[0];
                CanReturn Back(CanState state) => new(default, can.Code, wishes.SentOn) { State = state };
                ShipmentPlan After(CanState state) =>
                    ShipmentPlan.Make(school, [records[0] with { Received = [Back(state)] }, .. records.Skip(1)], wishes);
                Assert.Empty(After(CanState.Processed).Shipments);
                Assert.Equal([can.Code], After(CanState.Unprocessed).Shipments.SelectMany(s => s.Cans).Select(c => c.Code.ToString()));
                Assert.Equal([can.Code], After(CanState.GoesOn).Shipments.SelectMany(s => s.Cans).Select(c => c.Code.ToString()));
            }
        );

    [Fact]
    public void A_box_holds_what_a_box_holds_and_only_the_last_holds_less() =>
        Any.Sample(
            (school, wishes) =>
            {
                foreach (var shipment in ShipmentPlan.Make(school, [], wishes).Shipments)
                {
                    Assert.Equal(Enumerable.Range(1, shipment.Cans.Length), shipment.Cans.Select(c => c.Number));
                    var boxes = shipment.Cans.GroupBy(c => c.Box).Select(b => b.Count()).ToList();
                    Assert.Equal(shipment.Boxes, boxes.Count);
                    Assert.All(boxes.SkipLast(1), b => Assert.Equal(wishes.BoxHolds, b));
                    Assert.InRange(boxes[^1], 1, wishes.BoxHolds);
                }
            }
        );

    [Fact]
    public void Cans_of_one_process_and_push_lie_together() =>
        Any.Sample(
            (school, wishes) =>
            {
                foreach (var shipment in ShipmentPlan.Make(school, [], wishes).Shipments)
                {
                    var work = shipment.Cans.Select(c => (LabNames.Plain(c.Process ?? ""), c.Push)).ToList();
                    var runs = work.Where((w, i) => i == 0 || w != work[i - 1]).ToList();
                    Assert.Equal(work.Distinct().Count(), runs.Count);
                }
            }
        );

    [Fact]
    public void Parts_of_the_bill_add_up_to_it_to_the_cent() =>
        Any.Sample(
            (school, wishes) =>
            {
                foreach (var shipment in ShipmentPlan.Make(school, [], wishes).Shipments)
                {
                    if (ShipmentBill.Of(shipment, wishes.SharedBy) is not { } bill)
                    {
                        continue;
                    }

                    var shipping = Cents(Ratio.FromDecimal(bill.BoxRate ?? 0) * shipment.Boxes);
                    var before = CostBook.SumOf(bill.Lines.Select(l => l.Line)) + bill.Minimum + shipping;
                    Assert.Equal(shipping, bill.Shipping);
                    Assert.Equal(Cents(Ratio.FromDecimal(before) * Ratio.FromDecimal(bill.TaxRate ?? 0)), bill.Tax);
                    Assert.Equal(before + bill.Tax, bill.Total);
                    Assert.Equal(bill.Total, bill.Payers.Sum(p => p.Amount));
                    Assert.All(bill.Shares, s => Assert.Equal(0, s.Total * 100 % 1));
                    Assert.All(bill.Shares, s => Assert.True(s is { Work: >= 0, Minimum: >= 0, Shipping: >= 0, Tax: >= 0 }));
                }
            }
        );

    static decimal Cents(Ratio amount) => CostBook.ToCents(amount)!.Value;
}
