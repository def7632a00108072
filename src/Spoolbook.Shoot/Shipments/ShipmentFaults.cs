using System.Globalization;
using Spoolbook.Shoot.Cans;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Shipments;

/// <summary>What would make a lab mix two cans up, call, or send a can back: found before anything is printed.</summary>
public static class ShipmentFaults
{
    /// <summary>A production that cannot be read at all, so that nobody knows which of its rolls wait.</summary>
    /// <param name="folder">Its folder, from the school's; empty for the school's own.</param>
    public static Finding Unreadable(string folder) =>
        new(
            ShipmentChecks.CannotBeRead,
            Level.Error,
            Sentence.Of("shipment/cannot-be-read.message"),
            new Place(folder.Length == 0 ? "production.yaml" : folder + "/production.yaml", 1, 1, 0)
        )
        {
            Advice = Sentence.Of("shipment/cannot-be-read.help", ("folder", folder.Length == 0 ? "." : folder)),
        };

    internal static IEnumerable<Finding> Find(
        IReadOnlyList<SchoolProduction> productions,
        IReadOnlyList<Shipment> shipments,
        IReadOnlyList<(PackedCan Can, ShipmentRecord Record, ShippedCan Before)> went,
        IReadOnlySet<string> gone,
        ShipmentWishes wishes
    ) =>
        [
            .. productions.Where(p => p.HasErrors && !wishes.Without.Contains(p.Folder) && MayGo(p, gone)).Select(Errors),
            .. Codes([.. productions.Where(p => !wishes.Without.Contains(p.Folder))], shipments),
            .. went.Where(w => w.Before.Production != w.Can.Production.Folder && w.Before.Title != w.Can.Production.Title).Select(Taken),
            .. shipments.SelectMany(InOne),
            .. LabsAlike(shipments),
        ];

    static IEnumerable<Finding> InOne(Shipment shipment) =>
        [
            .. shipment.Cans.Where(c => c.Process is null).Select(NoProcess),
            .. Misread(shipment),
            .. NotRun(shipment),
            .. Titles(shipment),
            .. Prices(shipment),
            .. shipment.Productions.Select(Address).OfType<string>().Distinct().Skip(1).Any() ? [Addresses(shipment)] : (Finding[])[],
        ];

    // What could not be read may be a roll that waits, and so is one whose lot nobody knows.
    static bool MayGo(SchoolProduction production, IReadOnlySet<string> gone) =>
        !production.Books.Production.Unread.IsEmpty
        || production.Books.Production.Rolls.Any(r =>
            r is { Unload: not null, GoesToLab: true }
            && production.Books.Production.SentOn(r) is null
            && !gone.Contains(CanCode.Of(production.Books.Production, r).ToString())
        );

    static Finding Errors(SchoolProduction production) =>
        new(
            ShipmentChecks.ProductionWithErrors,
            Level.Error,
            Sentence.Of(
                "shipment/production-with-errors.message",
                ("production", production.Title.Length > 0 ? production.Title : production.Folder)
            ),
            production.At(production.Books.Production.Place)
        )
        {
            Advice = Sentence.Of("shipment/production-with-errors.help", ("folder", production.Folder)),
        };

    // What a lab compares by eye and by ear: HER-ON and heron are one.
    static IEnumerable<Finding> Codes(IReadOnlyList<SchoolProduction> productions, IReadOnlyList<Shipment> shipments) =>
        from same in productions.GroupBy(p => LabNames.Plain(p.Code), StringComparer.Ordinal)
        where shipments.Any(s => s.Productions.Any(same.Contains))
        let first = same.First()
        from other in same.Skip(1)
        let cans = SameCans(first, other)
        select new Finding(
            ShipmentChecks.SameCode,
            Level.Error,
            cans.Length == 0
                ? Sentence.Of("shipment/same-code.message", ("code", other.Code), ("title", other.Title), ("other", first.Title))
                : Sentence.Of(
                    "shipment/same-code.message.cans",
                    ("code", other.Code),
                    ("title", other.Title),
                    ("other", first.Title),
                    ("cans", cans)
                ),
            other.At(other.Books.Production.Code.Place)
        )
        {
            Others =
            [
                new Related(first.At(first.Books.Production.Code.Place), Sentence.Of("shipment/same-code.other", ("other", first.Title))),
            ],
            Advice = Sentence.Of("shipment/same-code.help"),
        };

    static string SameCans(SchoolProduction one, SchoolProduction other)
    {
        var names = one.Books.Shoot.Rolls.Select(r => LabNames.Plain(r.Roll.Name.Value)).ToHashSet(StringComparer.Ordinal);
        return string.Join(
            ", ",
            other
                .Books.Shoot.Rolls.Where(r => names.Contains(LabNames.Plain(r.Roll.Name.Value)))
                .Select(r => CanCode.Of(other.Books.Production, r.Roll).ToString())
        );
    }

    static Finding Taken((PackedCan Can, ShipmentRecord Record, ShippedCan Before) went) =>
        new(
            ShipmentChecks.CodeWentBefore,
            Level.Error,
            Sentence.Of(
                "shipment/code-went-before.message",
                ("can", went.Can.Code.ToString()),
                ("day", Day(went.Record.SentOn)),
                ("other", went.Before.Title)
            ),
            went.Can.Place
        )
        {
            Roll = went.Can.Roll.Roll.Name.Value,
            Others = [new Related(went.Before.Place, Sentence.Of("shipment/code-went-before.other"))],
            Advice = Sentence.Of("shipment/code-went-before.help", ("title", went.Can.Production.Title)),
        };

    static Finding NoProcess(PackedCan can) =>
        new(ShipmentChecks.NoProcess, Level.Error, Sentence.Of("shipment/no-process.message", ("can", can.Code.ToString())), can.Place)
        {
            Roll = can.Roll.Roll.Name.Value,
            Advice = Sentence.Of("shipment/no-process.help"),
        };

    // HER/ON1 and HERO/N1 are one code to whoever reads it aloud, check character and all.
    static IEnumerable<Finding> Misread(Shipment shipment) =>
        from same in shipment.Cans.GroupBy(c => LabNames.Plain(c.Code.ToString()), StringComparer.Ordinal)
        from other in same.Skip(1)
        let first = same.First()
        where LabNames.Plain(first.Production.Code) != LabNames.Plain(other.Production.Code)
        select new Finding(
            ShipmentChecks.ReadsAlike,
            Level.Error,
            Sentence.Of("shipment/reads-alike.message", ("can", other.Code.ToString()), ("other", first.Code.ToString())),
            other.Place
        )
        {
            Roll = other.Roll.Roll.Name.Value,
            Others = [new Related(first.Place, Sentence.Of("shipment/reads-alike.other", ("other", first.Code.ToString())))],
            Advice = Sentence.Of("shipment/reads-alike.help"),
        };

    // A production that does not write what the lab runs is judged by those that do.
    static IEnumerable<Finding> NotRun(Shipment shipment)
    {
        var runs = shipment
            .Productions.SelectMany(p => p.Books.Production.Lab!.Processes.Select(r => (Production: p, Process: r)))
            .ToList();
        var wanting =
            from can in shipment.Cans
            where
                runs.Count > 0
                && can.Process is not null
                && can.Production.Books.Production.Lab!.Processes.IsEmpty
                && !runs.Exists(r => LabNames.Plain(r.Process.Value) == LabNames.Plain(can.Process))
            group can by can.Process into same
            let first = runs[0]
            select new Finding(
                ShipmentChecks.ProcessNotRun,
                Level.Error,
                Sentence.Of(
                    "shipment/process-not-run.message",
                    ("lab", shipment.Lab),
                    ("process", same.Key!),
                    ("cans", string.Join(", ", same.Select(c => c.Code)))
                ),
                same.First().Place
            )
            {
                Others =
                [
                    new Related(
                        first.Production.At(first.Process.Place),
                        Sentence.Of("shipment/process-not-run.other", ("production", first.Production.Code), ("lab", shipment.Lab))
                    ),
                ],
                Advice = Sentence.Of("shipment/process-not-run.help"),
            };
        return wanting;
    }

    static IEnumerable<Finding> Titles(Shipment shipment) =>
        from same in shipment.Productions.GroupBy(p => LabNames.Plain(p.Title), StringComparer.Ordinal)
        let first = same.First()
        from other in same.Skip(1)
        select new Finding(
            ShipmentChecks.SameTitle,
            Level.Warning,
            Sentence.Of("shipment/same-title.message", ("code", other.Code), ("other", first.Code), ("title", other.Title)),
            other.At(other.Books.Production.Title.Place)
        )
        {
            Others =
            [
                new Related(first.At(first.Books.Production.Title.Place), Sentence.Of("shipment/same-title.other", ("other", first.Code))),
            ],
            Advice = Sentence.Of("shipment/same-title.help"),
        };

    // One bill has one price of a box, one rate of tax, one kind of minimum.
    static IEnumerable<Finding> Prices(Shipment shipment)
    {
        var priced = shipment.Productions.Where(p => p.Books.Production.Rates is not null).ToList();
        return
        [
            .. Differ("currency", r => r.Currency.Value, r => r.Currency.Place),
            .. Differ("shipping", r => Amount(r.Shipping), r => r.Shipping!.Place),
            .. Differ("tax", r => Amount(r.Tax), r => r.Tax!.Place),
            .. Differ("minimum-per", r => r.MinimumPer?.Value.ToString().ToLowerInvariant(), r => r.MinimumPer!.Place),
        ];

        // 18 and 18.00 are one price.
        static string? Amount(Located<decimal>? price) => price?.Value.ToString("G29", CultureInfo.InvariantCulture);

        IEnumerable<Finding> Differ(string key, Func<Rates, string?> value, Func<Rates, Place> place)
        {
            var written = priced.Where(p => value(p.Books.Production.Rates!) is not null).ToList();
            var differing =
                from other in written.Skip(1)
                let first = written[0]
                where value(other.Books.Production.Rates!) != value(first.Books.Production.Rates!)
                select new Finding(
                    ShipmentChecks.PricesDiffer,
                    Level.Warning,
                    Sentence.Of(
                        "shipment/prices-differ.message",
                        ("code", other.Code),
                        ("other", first.Code),
                        ("key", key),
                        ("lab", shipment.Lab)
                    ),
                    other.At(place(other.Books.Production.Rates!))
                )
                {
                    Others =
                    [
                        new Related(
                            first.At(place(first.Books.Production.Rates!)),
                            Sentence.Of("shipment/prices-differ.other", ("other", first.Code))
                        ),
                    ],
                    Advice =
                        key == "currency"
                            ? Sentence.Of("shipment/prices-differ.help.currency")
                            : Sentence.Of("shipment/prices-differ.help", ("other", first.Code)),
                };
            return differing;
        }
    }

    static string? Address(SchoolProduction production) =>
        production.Books.Production.Lab is { Address: { IsEmpty: false } lines }
            ? LabNames.Plain(string.Concat(lines.Select(l => l.Value)))
            : null;

    static Finding Addresses(Shipment shipment)
    {
        var first = shipment.Productions.First(p => Address(p) is not null);
        var other = shipment.Productions.First(p => Address(p) is { } address && address != Address(first));
        return new Finding(
            ShipmentChecks.AddressDiffers,
            Level.Warning,
            Sentence.Of("shipment/address-differs.message", ("code", other.Code), ("other", first.Code), ("lab", shipment.Lab)),
            other.At(other.Books.Production.Lab!.Address[0].Place)
        )
        {
            Others =
            [
                new Related(
                    first.At(first.Books.Production.Lab!.Address[0].Place),
                    Sentence.Of("shipment/address-differs.other", ("other", first.Code))
                ),
            ],
            Advice = Sentence.Of("shipment/address-differs.help", ("other", first.Code)),
        };
    }

    // Two consignments where one is meant pay for two boxes.
    static IEnumerable<Finding> LabsAlike(IReadOnlyList<Shipment> shipments) =>
        from other in shipments.Skip(1)
        let near = Likeness.Nearest(other.Lab, shipments.TakeWhile(s => s != other).Select(s => s.Lab))
        where near is not null
        let production = other.Cans[0].Production
        select new Finding(
            ShipmentChecks.LabsAlike,
            Level.Warning,
            Sentence.Of("shipment/labs-alike.message", ("lab", other.Lab), ("other", near)),
            production.At(production.Books.Production.Lab!.Name!.Place)
        )
        {
            Advice = Sentence.Of("shipment/labs-alike.help"),
        };

    static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
