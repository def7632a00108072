using System.Collections.Immutable;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.LabOrders;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Shipments;

namespace Spoolbook.Papers.Shipments;

/// <summary>The facts of the order for a consignment: the intake sheet, a part for each production, and the bill.</summary>
public sealed record ShipmentOrderFacts(PaperHead Head) : PaperFacts(Head)
{
    public required string Id { get; init; }
    public required string Lab { get; init; }
    public required ImmutableArray<string> Address { get; init; }
    public required ImmutableArray<string> Contact { get; init; }

    /// <summary>Where all of it goes back; empty where productions differ, so that each part says it.</summary>
    public required ImmutableArray<string> ReturnTo { get; init; }
    public required string NeededBy { get; init; }
    public required string SentOn { get; init; }
    public required string BackBy { get; init; }
    public required string Productions { get; init; }
    public required string Cans { get; init; }
    public required string Exposed { get; init; }
    public required string Boxes { get; init; }
    public required string LengthUnit { get; init; }
    public required string OfCans { get; init; }
    public required ImmutableArray<ShipmentCanFacts> Exceptions { get; init; }
    public required ImmutableArray<ShipmentWorkLine> Work { get; init; }
    public required ImmutableArray<ShipmentPartFacts> Parts { get; init; }
    public required ImmutableArray<KeptBack> LeftOut { get; init; }
    public required ShipmentBillFacts? Bill { get; init; }

    internal static ShipmentOrderFacts Of(ShipmentSource source)
    {
        var (shipment, format) = (source.Shipment, source.Format);
        var labs = shipment.Productions.Select(p => p.Books.Production.Lab!).ToList();
        var returns = labs.Select(l => string.Join('\n', Lines(l.ReturnTo))).Distinct().ToList();
        return new ShipmentOrderFacts(source.Head)
        {
            Id = shipment.Id,
            Lab = shipment.Lab,
            Address = Lines(labs.Find(l => !l.Address.IsEmpty)?.Address),
            Contact = Lines(labs.Find(l => !l.Contact.IsEmpty)?.Contact),
            ReturnTo = returns.Count == 1 ? Lines(labs[0].ReturnTo) : [],
            NeededBy = labs.Min(l => l.NeededBy?.Value) is { } day ? format.Date(day) : format.Words["not-stated"],
            SentOn = format.Date(shipment.SentOn),
            BackBy = shipment.BackBy is { } back ? format.Date(back) : "",
            Productions = format.Count(shipment.Productions.Length, "production"),
            Cans = format.Count(shipment.Cans.Length, "can"),
            Exposed = source.Film(shipment.Cans),
            Boxes = format.Count(shipment.Boxes, "box"),
            LengthUnit = format.LengthUnitName,
            OfCans = Exceptional(source, shipment.Cans),
            Exceptions = NotRoutine(source, shipment.Cans),
            Work = [.. WorkLines(source)],
            Parts = [.. shipment.Productions.Select((p, i) => Part(source, p, i + 1))],
            LeftOut =
            [
                .. from roll in source.Papers.LeftOut
                group roll by (roll.Production, roll.Reason) into same
                select new KeptBack(
                    $"{same.Key.Production.Code} {RollRuns.Of(same.Select(r => r.Roll.Roll.Name.Value))}",
                    format.Words[
                        same.Key.Reason switch
                        {
                            LeftOutReason.InCamera => "kept-in-camera",
                            LeftOutReason.NoLab => "shipment-no-lab",
                            LeftOutReason.Without => "shipment-left-here",
                            _ => "kept-held",
                        }
                    ]
                ),
            ],
            Bill = ShipmentBillFacts.Of(source),
        };
    }

    static string Exceptional(ShipmentSource source, IReadOnlyCollection<PackedCan> cans) =>
        source.Words.Fill(
            "exceptions-of",
            ("n", PaperFormat.Number(cans.Count(c => source.Can(c).Can.IsException))),
            ("cans", source.Format.Count(cans.Count, "can"))
        );

    // What costs most to miss first.
    static ImmutableArray<ShipmentCanFacts> NotRoutine(ShipmentSource source, IEnumerable<PackedCan> cans) =>
        [.. cans.Select(source.Can).Where(c => c.Can.IsException).OrderByDescending(c => c.Can.Cost)];

    static IEnumerable<ShipmentWorkLine> WorkLines(ShipmentSource source) =>
        from can in source.Shipment.Cans
        group can by (Process: LabNames.Plain(can.Process ?? ""), can.Push, Gauge: can.Production.Books.Production.Gauge.Name) into same
        let cans = same.ToList()
        select new ShipmentWorkLine(
            source.Format.Process(cans[0].Process),
            same.Key.Push == 0 ? "" : source.Format.Stops(same.Key.Push),
            same.Key.Gauge,
            PaperFormat.Number(cans.Count),
            source.Film(cans),
            ShipmentSource.Numbers(cans),
            RollRuns.Of(cans.Select(c => PaperFormat.Number(c.Box)).Distinct())
        );

    static ShipmentPartFacts Part(ShipmentSource source, SchoolProduction production, int number)
    {
        var format = source.FormatOf(production);
        var record = production.Books.Production;
        var (lab, cans) = (record.Lab!, source.Shipment.Of(production));
        var sending = new Sending(1, source.Shipment.SentOn, [.. cans.Select(c => c.Roll)]);
        return new ShipmentPartFacts
        {
            Title = production.Title,
            Code = production.Code,
            Credits = format.Credits,
            Invented = record.Invented?.Value ?? "",
            Part = format.Words.Fill(
                "shipment-part",
                ("n", PaperFormat.Number(number)),
                ("all", PaperFormat.Number(source.Shipment.Productions.Length))
            ),
            Cans = format.Count(cans.Length, "can"),
            Exposed = source.Film(cans),
            Numbers = ShipmentSource.Numbers(cans),
            Gauge = record.Gauge.Name,
            BillTo = Lines(lab.BillTo),
            InDoubt = Lines(lab.InDoubt),
            ReturnTo = Lines(lab.ReturnTo),
            Agreed = Lines(lab.Agreed),
            NeededBy = lab.NeededBy is { } day ? format.Date(day.Value) : format.Words["not-stated"],
            ScanTakes = cans.Select(c => RollPhrases.ToScan(c.Roll, format)).FirstOrDefault(said => said.Length > 0) ?? "",
            OfCans = Exceptional(source, cans),
            Exceptions = NotRoutine(source, cans),
            Routine =
            [
                .. from can in cans
                let facts = source.Can(can)
                where !facts.Can.IsException
                group (can, facts) by facts.Can.Process into same
                select new ShipmentGroup(
                    same.Key,
                    format.Count(same.Count(), "can"),
                    source.Film(same.Select(s => s.can)),
                    [.. same.Select(s => s.facts)]
                ),
            ],
            LacksDeliver = production.Books.Delivery.IsMissing(sending),
            Deliver = DeliverFacts.Of(production.Books.Delivery, sending, format),
            Cost = source.Papers.Bill?.Shares.FirstOrDefault(s => s.Production == production) is { } share
                ? format.Words.Fill(
                    source.Papers.Bill.IsOpen ? "shipment-part-costs-at-least" : "shipment-part-costs",
                    ("amount", format.Money(share.Total))
                )
                : "",
        };
    }

    static ImmutableArray<string> Lines(ImmutableArray<Located<string>>? lines) =>
        lines is { } written ? [.. written.Select(l => l.Value)] : [];
}
