using System.Globalization;
using Spoolbook.Shoot.Cans;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Shipments;

/// <summary>What would make a lab mix two cans up, call, or send a can back: found before anything is printed.</summary>
static class ShipmentFaults
{
    public static IEnumerable<ShipmentFault> Find(
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

    static IEnumerable<ShipmentFault> InOne(Shipment shipment) =>
        [
            .. shipment.Cans.Where(c => c.Process is null).Select(NoProcess),
            .. Misread(shipment),
            .. NotRun(shipment),
            .. Titles(shipment),
            .. Prices(shipment),
            .. shipment.Productions.Select(Address).OfType<string>().Distinct().Skip(1).Any() ? [Addresses(shipment)] : (ShipmentFault[])[],
        ];

    // What could not be read may be a roll that waits, and so is one whose lot nobody knows.
    static bool MayGo(SchoolProduction production, IReadOnlySet<string> gone) =>
        !production.Books.Production.Unread.IsEmpty
        || production.Books.Production.Rolls.Any(r =>
            r is { Unload: not null, GoesToLab: true }
            && production.Books.Production.SentOn(r) is null
            && !gone.Contains(CanCode.Of(production.Books.Production, r).ToString())
        );

    static ShipmentFault Errors(SchoolProduction production) =>
        new(
            Level.Error,
            ShipmentFault.At(production, production.Books.Production.Place),
            $"{production.Title} has errors. Put them right (spoolbook check {production.Folder}), "
                + $"or leave it here with --without {production.Folder}."
        );

    // What a lab compares by eye and by ear: HER-ON and heron are one.
    static IEnumerable<ShipmentFault> Codes(IReadOnlyList<SchoolProduction> productions, IReadOnlyList<Shipment> shipments) =>
        from same in productions.GroupBy(p => LabNames.Plain(p.Code), StringComparer.Ordinal)
        where same.Skip(1).Any() && shipments.Any(s => s.Productions.Any(same.Contains))
        let first = same.First()
        from other in same.Skip(1)
        let cans = SameCans(first, other)
        select new ShipmentFault(
            Level.Error,
            ShipmentFault.At(other, other.Books.Production.Code.Place),
            $"The code {other.Code} of {other.Title} is also that of {first.Title} "
                + $"({ShipmentFault.At(first, first.Books.Production.Code.Place)})"
                + (cans.Length == 0 ? "" : $", and both have a can {cans}")
                + ": the lab cannot know whose can it holds. Give one of them another code, and print its labels again."
        );

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

    static ShipmentFault Taken((PackedCan Can, ShipmentRecord Record, ShippedCan Before) went) =>
        new(
            Level.Error,
            went.Can.Place,
            $"A can {went.Can.Code} went on {Day(went.Record.SentOn)} already, of {went.Before.Title} ({went.Before.Place}). "
                + $"{went.Can.Production.Title} needs a code of its own."
        );

    static ShipmentFault NoProcess(PackedCan can) =>
        new(
            Level.Error,
            can.Place,
            $"Nobody says which process {can.Code} goes through. Write it on its lot, or under `lab:` of the roll."
        );

    // HER/ON1 and HERO/N1 are one code to whoever reads it aloud, check character and all.
    static IEnumerable<ShipmentFault> Misread(Shipment shipment) =>
        from same in shipment.Cans.GroupBy(c => LabNames.Plain(c.Code.ToString()), StringComparer.Ordinal)
        from other in same.Skip(1)
        let first = same.First()
        where LabNames.Plain(first.Production.Code) != LabNames.Plain(other.Production.Code)
        select new ShipmentFault(
            Level.Error,
            other.Place,
            $"{other.Code} reads as {first.Code} ({first.Place}) does: the lab cannot tell them apart. "
                + "Give one of the productions another code, and print its labels again."
        );

    // A production that does not write what the lab runs is judged by those that do.
    static IEnumerable<ShipmentFault> NotRun(Shipment shipment)
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
            select new ShipmentFault(
                Level.Error,
                same.First().Place,
                $"{shipment.Lab} does not run {same.Key}, by {ShipmentFault.At(first.Production, first.Process.Place)}: "
                    + $"{string.Join(", ", same.Select(c => c.Code))}. Send it to a lab that does."
            );
        return wanting;
    }

    static IEnumerable<ShipmentFault> Titles(Shipment shipment) =>
        from same in shipment.Productions.GroupBy(p => LabNames.Plain(p.Title), StringComparer.Ordinal)
        where same.Skip(1).Any()
        let first = same.First()
        from other in same.Skip(1)
        select new ShipmentFault(
            Level.Warning,
            ShipmentFault.At(other, other.Books.Production.Title.Place),
            $"{other.Code} has the title of {first.Code} ({ShipmentFault.At(first, first.Books.Production.Title.Place)}), "
                + $"'{other.Title}': the lab could mix them. Add a word to one."
        );

    // One bill has one price of a box, one rate of tax, one kind of minimum.
    static IEnumerable<ShipmentFault> Prices(Shipment shipment)
    {
        var priced = shipment.Productions.Where(p => p.Books.Production.Rates is not null).ToList();
        return
        [
            .. Differ("currency", r => r.Currency.Value, r => r.Currency.Place),
            .. Differ("shipping", r => r.Shipping?.Value.ToString(CultureInfo.InvariantCulture), r => r.Shipping!.Place),
            .. Differ("tax", r => r.Tax?.Value.ToString(CultureInfo.InvariantCulture), r => r.Tax!.Place),
            .. Differ("minimum-per", r => r.MinimumPer?.Value.ToString().ToLowerInvariant(), r => r.MinimumPer!.Place),
        ];

        IEnumerable<ShipmentFault> Differ(string key, Func<Rates, string?> value, Func<Rates, Place> place)
        {
            var written = priced.Where(p => value(p.Books.Production.Rates!) is not null).ToList();
            var differing =
                from other in written.Skip(1)
                let first = written[0]
                where value(other.Books.Production.Rates!) != value(first.Books.Production.Rates!)
                select new ShipmentFault(
                    Level.Warning,
                    ShipmentFault.At(other, place(other.Books.Production.Rates!)),
                    $"{other.Code} and {first.Code} write `{key}` of {shipment.Lab} differently "
                        + $"({ShipmentFault.At(first, place(first.Books.Production.Rates!))}). One bill has one: "
                        + (key == "currency" ? "the cost stays open." : $"that of {first.Code} counts.")
                );
            return differing;
        }
    }

    static string? Address(SchoolProduction production) =>
        production.Books.Production.Lab is { Address: { IsEmpty: false } lines }
            ? LabNames.Plain(string.Concat(lines.Select(l => l.Value)))
            : null;

    static ShipmentFault Addresses(Shipment shipment)
    {
        var first = shipment.Productions.First(p => Address(p) is not null);
        var other = shipment.Productions.First(p => Address(p) is { } address && address != Address(first));
        return new ShipmentFault(
            Level.Warning,
            ShipmentFault.At(other, other.Books.Production.Lab!.Address[0].Place),
            $"{other.Code} and {first.Code} write another address of {shipment.Lab} "
                + $"({ShipmentFault.At(first, first.Books.Production.Lab!.Address[0].Place)}). The order has that of {first.Code}."
        );
    }

    // Two consignments where one is meant pay for two boxes.
    static IEnumerable<ShipmentFault> LabsAlike(IReadOnlyList<Shipment> shipments) =>
        from other in shipments.Skip(1)
        let near = Findings.Likeness.Nearest(other.Lab, shipments.TakeWhile(s => s != other).Select(s => s.Lab))
        where near is not null
        let production = other.Cans[0].Production
        select new ShipmentFault(
            Level.Warning,
            ShipmentFault.At(production, production.Books.Production.Lab!.Name!.Place),
            $"{other.Lab} and {near} are two consignments. If they are one lab, write its name in one way."
        );

    static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
