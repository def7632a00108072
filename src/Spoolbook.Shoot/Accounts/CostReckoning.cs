using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>Makes the lines of the cost.</summary>
static class CostReckoning
{
    // Film still in a camera can go with a consignment that has not gone yet, and otherwise needs a box of its own.
    public static ImmutableArray<CostLine> Lines(ShootBook book, StockBook stock, ImmutableArray<Sending> sendings) =>
        [
            .. book.Production.Lots.Select(Stock),
            .. CostTransfers.Lines(stock, book.Production),
            .. sendings.SelectMany(s => Stage(CostStage.Ordered, book, s.Rolls, s.Number, s.Boxes)),
            .. Stage(CostStage.Committed, book, [.. StillInCamera(book)], null, sendings.Any(s => s.SentOn is null) ? 0 : 1),
        ];

    // Intentionally held back is not committed, and in the camera with nothing run is not exposed.
    static IEnumerable<RollBook> StillInCamera(ShootBook book) =>
        book.Counted.Where(r => r.Roll is { Unload: null, GoesToLab: true } && r.Tally.Exposed > Footage.Zero);

    static CostLine Stock(StockLot lot) =>
        new CostLine
        {
            Stage = CostStage.Bought,
            Kind = CostKind.Stock,
            Lot = lot.Name.Value,
            Quantity = lot.Units.Value,
            Unit = CostUnit.Unit,
            Rate = lot.UnitPrice?.Value,
        }.Reckoned();

    static IEnumerable<CostLine> Stage(CostStage stage, ShootBook book, ImmutableArray<RollBook> rolls, int? consignment, int boxes)
    {
        if (rolls.IsEmpty && consignment is null)
        {
            return [];
        }

        var rates = book.Production.Rates;
        var per = rates?.MinimumPer?.Value ?? MinimumPer.Roll;
        var lines = Work(stage, book.Production, rolls, per == MinimumPer.Order ? MinimumPer.Production : per).ToList();
        if (boxes > 0)
        {
            lines.Add(
                new CostLine
                {
                    Stage = stage,
                    Kind = CostKind.Shipping,
                    Quantity = boxes,
                    Unit = CostUnit.Box,
                    Rate = rates?.Shipping?.Value,
                }.Reckoned()
            );
        }

        var taxed = Ratio.FromDecimal(CostBook.SumOf(lines));
        lines.Add(
            new CostLine
            {
                Stage = stage,
                Kind = CostKind.Tax,
                Quantity = taxed,
                Unit = CostUnit.Amount,
                Rate = rates?.Tax?.Value,
            }.Reckoned()
        );
        return lines.Select(l => l with { Consignment = consignment });
    }

    /// <summary>The lab's work on some rolls that are billed together, before shipping and tax.</summary>
    /// <param name="per">What the minimum is for; for an order, whose minimum is not this production's alone, no line has one.</param>
    public static IEnumerable<CostLine> Work(CostStage stage, Production production, IReadOnlyList<RollBook> rolls, MinimumPer per)
    {
        var lines = rolls.SelectMany(r => Work(stage, production, r, hasMinimum: per == MinimumPer.Roll)).ToList();
        if (per != MinimumPer.Production)
        {
            return lines;
        }

        // One line for all rolls of a process that has a minimum, as the lab bills it.
        var together =
            from process in production.Rates?.Processes ?? []
            where process.Minimum is not null
            let same = lines.Where(l => l.Kind == CostKind.Process && l.Name == process.Process.Value).ToList()
            where same.Count > 0
            select (
                First: same[0],
                Line: (
                    same[0] with
                    {
                        Roll = null,
                        Film = same.Aggregate(Footage.Zero, (sum, l) => sum + l.Film!.Value),
                        Quantity = same.Aggregate(Ratio.Zero, (sum, l) => sum + l.Quantity),
                        Minimum = process.Minimum!.Value,
                    }
                ).Reckoned()
            );
        var merged = together.DistinctBy(t => t.First.Name).ToList();
        return
        [
            .. from line in lines
            let of = merged.FirstOrDefault(m => line.Kind == CostKind.Process && m.First.Name == line.Name)
            where of.First is null || ReferenceEquals(of.First, line)
            select of.Line ?? line,
        ];
    }

    static IEnumerable<CostLine> Work(CostStage stage, Production production, RollBook roll, bool hasMinimum)
    {
        var work = roll.LabWork;
        var rates = production.Rates;
        var film = roll.Tally.InCan;
        var each = new CostLine
        {
            Stage = stage,
            Kind = CostKind.Prep,
            Roll = roll.Roll.Name.Value,
            Quantity = 1,
            Unit = CostUnit.Roll,
        };

        // A line without a price uses the house's own unit.
        CostLine ByLength(CostKind kind, LengthRate? rate)
        {
            var line = each with { Kind = kind, Film = film, Rate = rate?.Price.Value };
            return (rate?.By ?? production.Units) == LengthUnit.Metres
                ? line with
                {
                    Quantity = film.Metres(production.Gauge),
                    Unit = CostUnit.Metre,
                }
                : line with
                {
                    Quantity = film.Feet(production.Gauge),
                    Unit = CostUnit.Foot,
                };
        }

        var process = rates?.Processes.FirstOrDefault(p => p.Process.Value == work.Process);
        var processed = (
            ByLength(CostKind.Process, process?.Length) with
            {
                Name = work.Process,
                Minimum = hasMinimum ? process?.Minimum?.Value : null,
                Open = work.Process is null ? OpenReason.NoProcess : null,
            }
        ).Reckoned();
        yield return processed;

        if (work.StopsCharged.Sign > 0)
        {
            yield return (
                each with
                {
                    Kind = CostKind.Push,
                    Quantity = work.StopsCharged,
                    Unit = CostUnit.Stop,
                    Rate = rates?.PushPerStop?.Value.For(processed.Amount),
                }
            ).Reckoned();
        }

        foreach (var service in work.Services)
        {
            var priced = LabServices.KindOf(service) switch
            {
                CostKind.Prep => each with { Rate = rates?.PrepPerRoll?.Value },
                CostKind.Scan when rates is { Scan: null, ScanPerHour: { } hour } => ByLength(CostKind.Scan, null) with
                {
                    Quantity = film.Seconds(production.ProjectedAt) / 3600,
                    Unit = CostUnit.Hour,
                    Rate = hour.Value,
                },
                CostKind.Scan => ByLength(CostKind.Scan, rates?.Scan),
                CostKind.Workprint => ByLength(CostKind.Workprint, rates?.Workprint),
                _ => each with { Kind = CostKind.Service, Name = service },
            };
            yield return priced.Reckoned();
        }
    }
}
