using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Papers.CanLabels;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.LabOrders;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Shipments;

namespace Spoolbook.Papers.Shipments;

/// <summary>The input of a consignment's papers, written in one language and one unit whatever its productions print in.</summary>
internal sealed class ShipmentSource
{
    readonly Dictionary<SchoolProduction, PaperFormat> _formats;

    public ShipmentSource(ShipmentPapers papers, Translations words, PaperHead head)
    {
        (Papers, Head) = (papers, head);
        var lead = LeadOf(papers.Shipment);
        var units = papers.Shipment.Productions.All(p => p.Books.Production.Units == LengthUnit.Metres)
            ? LengthUnit.Metres
            : LengthUnit.Feet;
        var rates = papers.Shipment.Productions.Select(p => p.Books.Production.Rates).FirstOrDefault(r => r is not null);
        Production As(Production production) => production with { Units = units, Language = lead.Language, Rates = rates };
        Format = new PaperFormat(As(lead), words);
        _formats = papers.Shipment.Productions.ToDictionary(p => p, p => new PaperFormat(As(p.Books.Production), words));
        Sheet = papers.Shipment.Productions.Select(p => p.Books.Production.Labels?.Sheet?.Value).FirstOrDefault(s => s is not null)
            ?? LabelSheet.Cut;
    }

    public ShipmentPapers Papers { get; }

    public PaperHead Head { get; }

    public Shipment Shipment => Papers.Shipment;

    /// <summary>Writes what is about all of it.</summary>
    public PaperFormat Format { get; }

    public Translations Words => Format.Words;

    /// <summary>The sheet that its labels are printed on.</summary>
    public LabelSheet Sheet { get; }

    /// <summary>The production whose language, paper and school all papers have: the one with the most cans.</summary>
    public static Production LeadOf(Shipment shipment) => shipment.Productions.MaxBy(p => shipment.Of(p).Length)!.Books.Production;

    /// <summary>Writes what is about one production, in the common language and unit.</summary>
    public PaperFormat FormatOf(SchoolProduction production) => _formats[production];

    public ShipmentCanFacts Can(PackedCan can) =>
        new(
            PaperFormat.Number(can.Number),
            PaperFormat.Number(can.Box),
            can.Production.Title,
            CanFacts.Of(
                can.Roll,
                can.Production.Books,
                FormatOf(can.Production),
                Papers.Waived.GetValueOrDefault(can.Production.Folder, []),
                [.. Shipment.Of(can.Production).Select(c => c.Roll)]
            )
        );

    public CanLabel Label(PackedCan can) =>
        // In a box of twelve productions there are twelve R01.
        CanLabelsPaper
            .Exposed(can.Roll, can.Production.Books, FormatOf(can.Production))
            .Named($"{can.Production.Code} {can.Roll.Roll.Name.Value}") with
        {
            Lab = Shipment.Lab,
            Held = false,
            CanOf = Words.Fill(
                "shipment-label-can",
                ("n", PaperFormat.Number(can.Number)),
                ("all", PaperFormat.Number(Shipment.Cans.Length)),
                ("box", PaperFormat.Number(can.Box))
            ),
        };

    /// <summary>Film in some cans, with its unit; of several gauges apart, since feet of one are not feet of the other.</summary>
    public string Film(IEnumerable<PackedCan> cans)
    {
        var gauges = cans.GroupBy(c => c.Production.Books.Production.Gauge.Name, StringComparer.Ordinal).ToList();
        return string.Join(" + ", gauges.Select(g => Of(g) + (gauges.Count > 1 ? $" ({g.Key})" : "")));

        string Of(IEnumerable<PackedCan> same) =>
            FormatOf(same.First().Production)
                .AccountWithUnit(
                    same.Aggregate(Footage.Zero, (sum, c) => sum + c.Roll.Tally.InCan),
                    same.Sum(c => c.Production.Books.Metric.Of(c.Roll).InCan)
                );
    }

    /// <summary>The places of cans in the packing order, in few words: <c>1–12, 15</c>.</summary>
    public static string Numbers(IEnumerable<PackedCan> cans) => RollRuns.Of(cans.Select(c => PaperFormat.Number(c.Number)));

    public string Work(PackedCan can) => Format.Process(can.Process) + (can.Push == 0 ? "" : $", {Words["push"]} {Format.Stops(can.Push)}");
}
