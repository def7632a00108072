using CsCheck;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
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
    public void A_roll_is_in_at_most_one_open_consignment_whatever_comes_back_and_goes_again() =>
        Gen.Select(Any, Gen.Select(Gen.Enum<CanState>(), Gen.Int[0, 2]).Array[24])
            .Sample(
                (any, returns) =>
                {
                    var records = new List<ShipmentRecord>();
                    for (var round = 0; round < 4; round++)
                    {
                        var plan = ShipmentPlan.Make(any.School, records, any.Wishes with { SentOn = any.Wishes.SentOn.AddDays(round) });
                        records.AddRange(plan.Shipments.Select(AnySchool.RecordOf));
                        var open = records.SelectMany(r => r.Cans.Where(r.Holds).Select(c => c.Code)).ToList();
                        Assert.Equal(open.Distinct(), open);

                        // Some of what is out comes back, in one state or another.
                        var at = 0;
                        for (var i = 0; i < records.Count; i++)
                        {
                            var back =
                                from can in records[i].Missing
                                let next = returns[(round + at++) % returns.Length]
                                where next.Item2 == 0
                                select new CanReturn(default, can.Code, any.Wishes.SentOn) { State = next.Item1 };
                            records[i] = records[i] with { Received = [.. records[i].Received, .. back] };
                        }
                    }
                },
                iter: 60
            );

    [Fact]
    public void Shares_of_an_orders_minimums_are_what_each_process_lacks_to_the_highest_of_its_minimums() =>
        Any.Sample(
            (school, wishes) =>
            {
                foreach (var shipment in ShipmentPlan.Make(school, [], wishes).Shipments)
                {
                    var per = shipment
                        .Productions.Select(p => p.Books.Production.Rates?.MinimumPer?.Value)
                        .FirstOrDefault(p => p is not null);
                    if (ShipmentBill.Of(shipment, wishes.SharedBy) is not { } bill || per != MinimumPer.Order)
                    {
                        continue;
                    }

                    var rates = shipment.Productions.SelectMany(p => p.Books.Production.Rates?.Processes ?? []).ToList();
                    var lacking =
                        from lines in bill.Lines.Where(l => l.Line.Kind == CostKind.Process).GroupBy(l => LabNames.Plain(l.Line.Name!))
                        where lines.All(l => l.Line.Amount is not null)
                        let least = rates.Where(r => LabNames.Plain(r.Process.Value) == lines.Key).Max(r => r.Minimum?.Value) ?? 0
                        select Math.Max(0, least - lines.Sum(l => l.Line.Amount!.Value));
                    Assert.Equal(lacking.Sum(), bill.Minimum);
                    Assert.Equal(bill.Minimum, bill.Shares.Sum(s => s.Minimum));
                }
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
