using System.Collections.Immutable;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Shipments;

namespace Spoolbook.Papers.Shipments;

/// <summary>What a consignment should cost, and who pays what.</summary>
/// <param name="HasMinimum">Whether an order's minimum is shared.</param>
/// <param name="Rule">How common costs are shared.</param>
/// <param name="Open">What has no price; empty if nothing.</param>
public sealed record ShipmentBillFacts(
    ImmutableArray<ShipmentShareLine> Lines,
    ShipmentShareLine Sum,
    ImmutableArray<ShipmentPayer> Payers,
    bool HasMinimum,
    string Rule,
    string Open
)
{
    internal static ShipmentBillFacts? Of(ShipmentSource source)
    {
        if (source.Papers.Bill is not { } bill)
        {
            return null;
        }

        var (format, shipment) = (source.Format, source.Shipment);
        return new ShipmentBillFacts(
            [
                .. bill.Shares.Select(s =>
                    Line(s.Production.Code, source.Film(shipment.Of(s.Production)), s.Work, s.Minimum, s.Shipping, s.Tax, s.Total)
                ),
            ],
            Line(format.Words["cost-total"], source.Film(shipment.Cans), bill.Work, bill.Minimum, bill.Shipping, bill.Tax, bill.Total),
            [
                .. bill.Payers.Select(p => new ShipmentPayer(
                    p.Payer.Length == 0 ? format.Words["not-stated"] : p.Payer,
                    string.Join(", ", bill.Shares.Where(s => s.Payer == p.Payer).Select(s => s.Production.Code)),
                    format.Money(p.Amount)
                )),
            ],
            bill.Minimum > 0,
            format.Words["shipment-shared-by-" + bill.SharedBy.ToString().ToLowerInvariant()],
            string.Join("; ", Unpriced(bill, format))
        );

        ShipmentShareLine Line(string name, string film, decimal work, decimal minimum, decimal shipping, decimal tax, decimal total) =>
            new(name, film, format.Amount(work), format.Amount(minimum), format.Amount(shipping), format.Amount(tax), format.Money(total));
    }

    static IEnumerable<string> Unpriced(ShipmentBill bill, PaperFormat format) =>
        [
            .. from line in bill.Lines
            where line.Line.Amount is null
            group line by Name(line.Line, format) into same
            select $"{same.Key} ({string.Join(", ", same.Select(l => l.Production.Code).Distinct())})",
            .. bill.BoxRate is null ? [format.Words["cost-shipping"]] : (string[])[],
            .. bill.TaxRate is null ? [format.Words["cost-tax"]] : (string[])[],
        ];

    static string Name(CostLine line, PaperFormat format) =>
        line.Kind == CostKind.Process ? format.Process(line.Name)
        : line.Kind == CostKind.Service ? line.Name!
        : format.Words["cost-" + line.Kind.ToString().ToLowerInvariant()];
}
