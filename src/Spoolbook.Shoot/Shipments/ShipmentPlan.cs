using System.Collections.Immutable;
using System.Globalization;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Shipments;

/// <summary>What would go now, out of all productions of a school: one consignment a lab. Nothing is written yet.</summary>
/// <param name="Shipments">By the lab's name.</param>
/// <param name="LeftOut">Exposed film that does not go.</param>
/// <param name="Faults">What to know before, errors first.</param>
public sealed record ShipmentPlan(ImmutableArray<Shipment> Shipments, ImmutableArray<LeftOutRoll> LeftOut, ImmutableArray<Finding> Faults)
{
    /// <summary>Whether something has to be put right first.</summary>
    public bool HasErrors => Faults.Any(f => f.Level == Level.Error);

    /// <summary>The labs that productions name, each once.</summary>
    public ImmutableArray<string> Labs { get; private init; } = [];

    /// <summary>Rolls that went before, by a consignment's record or by what their production says.</summary>
    public int WentBefore { get; private init; }

    /// <summary>Plans the consignments: each exposed and unloaded roll that has not gone is in exactly one.</summary>
    public static ShipmentPlan Make(
        IReadOnlyList<SchoolProduction> productions,
        IReadOnlyList<ShipmentRecord> earlier,
        ShipmentWishes wishes
    )
    {
        var gone = earlier
            .SelectMany(r => r.Cans.Where(r.Holds).Select(c => (Record: r, Can: c)))
            .ToLookup(g => g.Can.Code, StringComparer.OrdinalIgnoreCase);
        var leftOut = new List<LeftOutRoll>();
        var going = new List<(string Lab, PackedCan Can)>();
        var went = new List<(PackedCan Can, ShipmentRecord Record, ShippedCan Before)>();
        var wentBefore = 0;
        foreach (var production in productions)
        {
            foreach (var roll in production.Books.Shoot.Counted)
            {
                var can = new PackedCan(0, 0, production, roll);
                if (production.Books.Production.SentOn(roll.Roll) is not null)
                {
                    wentBefore++;
                }
                else if (gone[can.Code.ToString()].FirstOrDefault() is { Record: { } record } before)
                {
                    wentBefore++;
                    went.Add((can, record, before.Can));
                }
                else if (WhyNot(production, roll, wishes) is { } why)
                {
                    leftOut.Add(new LeftOutRoll(production, roll, why));
                }
                else if (roll.Roll is { Unload: not null, GoesToLab: true })
                {
                    going.Add((production.Books.Production.Lab!.Name!.Value, can));
                }
            }
        }

        var labs = going.GroupBy(g => LabNames.Plain(g.Lab), StringComparer.Ordinal).ToList();
        var wanted = labs.Where(l => wishes.Lab is null || l.Key == LabNames.Plain(wishes.Lab)).OrderBy(l => l.Key, StringComparer.Ordinal);
        var taken = earlier.Select(r => r.Id).Concat(wishes.Taken).ToHashSet(StringComparer.OrdinalIgnoreCase);
        ImmutableArray<Shipment> shipments = [.. wanted.Select(lab => Pack(lab.First().Lab, [.. lab.Select(l => l.Can)], wishes, taken))];
        var faults = ShipmentFaults.Find(
            productions,
            shipments,
            went,
            gone.Select(g => g.Key).ToHashSet(StringComparer.OrdinalIgnoreCase),
            wishes
        );
        return new ShipmentPlan(
            shipments,
            [.. leftOut],
            [.. faults.OrderBy(f => f.Level != Level.Error)]
        )
        {
            Labs = [.. Names(productions)],
            WentBefore = wentBefore,
        };
    }

    static IEnumerable<string> Names(IEnumerable<SchoolProduction> productions) =>
        productions
            .Select(p => p.Books.Production.Lab?.Name?.Value)
            .OfType<string>()
            .DistinctBy(LabNames.Plain)
            .Order(StringComparer.Ordinal);

    // Null for a roll that goes, and for one with nothing exposed on it, of which nobody asks. A can that is sent with nothing
    // shot on it, as a test of the stock, needs a lab as any other does.
    static LeftOutReason? WhyNot(SchoolProduction production, RollBook roll, ShipmentWishes wishes) =>
        roll.Roll is { Unload: not null, GoesToLab: true }
            ? wishes.Without.Contains(production.Folder) ? LeftOutReason.Without
                : production.Books.Production.Lab?.Name is null ? LeftOutReason.NoLab
                : null
        : roll.Tally.Exposed == Film.Footage.Zero || roll.Roll.IsUnshot ? null
        : roll.Roll.GoesToLab ? LeftOutReason.InCamera
        : LeftOutReason.HeldBack;

    static Shipment Pack(string lab, IReadOnlyList<PackedCan> cans, ShipmentWishes wishes, HashSet<string> taken)
    {
        var ordered = cans.Select((can, at) => (can, at))
            .OrderBy(c => LabNames.Plain(c.can.Process ?? ""), StringComparer.Ordinal)
            .ThenBy(c => c.can.Production.Books.Production.Gauge.Name, StringComparer.Ordinal)
            .ThenBy(c => c.can.Push != 0)
            .ThenBy(c => c.can.Push)
            .ThenBy(c => c.can.Production.Code, StringComparer.Ordinal)
            .ThenBy(c => c.can.Production.Folder, StringComparer.Ordinal)
            .ThenBy(c => c.at);
        var days = cans.Max(c => c.Production.Books.Production.Lab?.Days?.Value);
        return new Shipment(
            Id(lab, wishes.SentOn, taken),
            lab,
            wishes.SentOn,
            wishes.BoxHolds,
            [.. ordered.Select((c, n) => c.can with { Number = n + 1, Box = (n / wishes.BoxHolds) + 1 })]
        )
        {
            BackBy = days is { } known ? wishes.SentOn.AddDays(known) : null,
        };
    }

    static string Id(string lab, DateOnly day, HashSet<string> taken)
    {
        var stem = string.Create(CultureInfo.InvariantCulture, $"{day:yyyy-MM-dd}-{LabNames.InFolder(lab)}");
        var id = Enumerable
            .Range(1, int.MaxValue)
            .Select(n => n == 1 ? stem : string.Create(CultureInfo.InvariantCulture, $"{stem}-{n}"))
            .First(taken.Add);
        return id;
    }
}
