using CsCheck;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Shipments;
using Spoolbook.Shoot.Tests.Money;
using Spoolbook.Shoot.Tests.Sheets;
using Spoolbook.Shoot.Tests.Stock;

namespace Spoolbook.Shoot.Tests.Shipments;

/// <summary>
/// Random schools: up to six productions with rolls of several processes, for two labs or none, some of them sent, in cameras or held
/// back.
/// </summary>
static class AnySchool
{
    static readonly Place _place = new("shipments/2026-10-16/consignment.yaml", 1, 1, 0);

    static readonly Gen<Rates?> AnyRates =
        from has in Gen.Frequency((5, Gen.Const(true)), (1, Gen.Const(false)))
        from foot in Gen.Int[0, 20_000]
        from minimum in Gen.Int[0, 9_000]
        from per in Gen.Enum<MinimumPer>()
        from shipping in Gen.Int[0, 3_000]
        from tax in Gen.Int[0, 30]
        select has
            ? PricedProduction.Full with
            {
                Processes =
                [
                    PricedProduction.Process("ecn-2", foot / 10_000m, minimum / 100m),
                    PricedProduction.Process("bw-reversal", foot / 20_000m, minimum / 50m),
                ],
                MinimumPer = Sheet.Written(per),
                Shipping = Sheet.Written(shipping / 100m),
                Tax = Sheet.Written(tax / 100m),
            }
            : null;

    static readonly Gen<RollOrder> AnyOrder =
        from process in Gen.OneOf(Gen.Const("ecn-2"), Gen.Const("bw-reversal"), Gen.Const("ECN 2"))
        from push in Gen.Frequency((3, Gen.Const(0.0)), (1, Gen.Const(1.0)), (1, Gen.Const(-1.0)))
        from sent in Gen.Frequency((4, Gen.Const(false)), (1, Gen.Const(true)))
        from held in Gen.Frequency((6, Gen.Const(false)), (1, Gen.Const(true)))
        select new RollOrder(default)
        {
            Process = Sheet.Written(process),
            Push = Sheet.Written(push),
            SentOn = sent ? Sheet.Written(new DateOnly(2026, 10, 1)) : null,
            Send = held ? Sheet.Written(false) : null,
        };

    static readonly Gen<Production> AnyProduction =
        from production in AnyShoot.Production
        from orders in AnyOrder.Array[8]
        from lab in Gen.OneOf(Gen.Const("Harbour Film Lab"), Gen.Const("harbour film lab"), Gen.Const("Brackwater"), Gen.Const(""))
        from rates in AnyRates
        from days in Gen.Int[0, 20]
        select production with
        {
            Rates = rates,
            Rolls = [.. production.Rolls.Select((r, i) => r with { Lab = orders[i % orders.Length] })],
            Lab = new Lab(default)
            {
                Name = lab.Length == 0 ? null : Sheet.Written(lab),
                Services = [Sheet.Written("prep"), Sheet.Written("scan")],
                Days = days == 0 ? null : Sheet.Written(days),
                BillTo = [Sheet.Written(days % 2 == 0 ? "The school" : "Somebody else")],
            },
        };

    /// <summary>The productions of a school.</summary>
    public static Gen<IReadOnlyList<SchoolProduction>> Productions { get; } =
        from productions in AnyProduction.Array[1, 6]
        select (IReadOnlyList<SchoolProduction>)
            [
                .. productions.Select(
                    (p, i) =>
                        new SchoolProduction(
                            $"p{i}",
                            Books.Of(p with { Code = Sheet.Written($"P{i}"), Title = Sheet.Written($"Production {i}") }),
                            HasErrors: false
                        )
                ),
            ];

    /// <summary>What whoever ships asks for.</summary>
    public static Gen<ShipmentWishes> Wishes { get; } =
        from box in Gen.Int[1, 9]
        from sharing in Gen.Enum<SharedBy>()
        select new ShipmentWishes(new DateOnly(2026, 10, 16)) { BoxHolds = box, SharedBy = sharing };

    /// <summary>The record that is written of a consignment.</summary>
    public static ShipmentRecord RecordOf(Shipment shipment) =>
        new(_place, shipment.Id, shipment.Lab, shipment.SentOn)
        {
            BoxHolds = shipment.BoxHolds,
            BackBy = shipment.BackBy,
            Cans =
            [
                .. shipment.Cans.Select(c => new ShippedCan(
                    _place,
                    c.Number,
                    c.Box,
                    c.Code.ToString(),
                    c.Production.Folder,
                    c.Roll.Roll.Name.Value
                )
                {
                    Title = c.Production.Title,
                }),
            ],
        };
}
