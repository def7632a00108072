using System.Collections.Immutable;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Wording;

namespace Spoolbook.Papers.Shipments;

/// <summary>The facts of the packing list: box by box, in packing order.</summary>
public sealed record PackingListFacts(PaperHead Head) : PaperFacts(Head)
{
    public required string Id { get; init; }
    public required string Lab { get; init; }
    public required string SentOn { get; init; }
    public required string Cans { get; init; }
    public required string Exposed { get; init; }
    public required string BoxCount { get; init; }
    public required ImmutableArray<ShipmentGroup> Boxes { get; init; }

    internal static PackingListFacts Of(ShipmentSource source)
    {
        var (shipment, format) = (source.Shipment, source.Format);
        return new PackingListFacts(source.Head)
        {
            Id = shipment.Id,
            Lab = shipment.Lab,
            SentOn = format.Date(shipment.SentOn),
            Cans = format.Count(shipment.Cans.Length, "can"),
            Exposed = source.Film(shipment.Cans),
            BoxCount = format.Count(shipment.Boxes, "box"),
            Boxes =
            [
                .. from can in shipment.Cans
                group can by can.Box into box
                select new ShipmentGroup(
                    format.Words.Fill("shipment-box-of", ("n", PaperFormat.Number(box.Key)), ("all", PaperFormat.Number(shipment.Boxes))),
                    format.Count(box.Count(), "can"),
                    source.Film(box),
                    [.. box.Select(source.Can)]
                ),
            ],
        };
    }
}
