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
        var lines = rolls.SelectMany(r => Work(stage, book.Production, r)).ToList();
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

    static IEnumerable<CostLine> Work(CostStage stage, Production production, RollBook roll)
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
                Minimum = process?.Minimum?.Value,
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
