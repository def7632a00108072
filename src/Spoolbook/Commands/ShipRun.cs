using Spoolbook.Papers;
using Spoolbook.Papers.Shipments;
using Spoolbook.Printing;
using Spoolbook.Reading.Shipments;
using Spoolbook.Shipping;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Shipments;
using Spoolbook.Writing;

namespace Spoolbook.Commands;

/// <summary>Makes the consignments of a school, whole or not at all: plans, says what is wrong, prints, writes.</summary>
internal sealed class ShipRun(ShipSettings settings, CommandEnvironment around)
{
    readonly string _school = Path.GetFullPath(Path.Combine(around.Folder, settings.School));
    readonly Dictionary<PackedCan, string> _digests = new(ReferenceEqualityComparer.Instance);

    public int Run()
    {
        // Before anything is read: whoever ships at the same time sees what this one wrote.
        using var work = settings.IsDryRun ? null : WorkFolder.Open(_school, "ship", around);
        var records = ShipmentRecords.Read(_school, settings.Shipments);
        records.PrintFindings(around);
        if (records.HasErrors)
        {
            around.Error.WriteLine("Nothing was shipped: nobody knows what went before, as long as a record cannot be read.");
            return ExitStatus.ErrorsFound;
        }

        var school = ShippingSchool.Read(_school, around);
        if (school.Productions.IsEmpty && school.Unreadable.IsEmpty)
        {
            return WrongUse.Print($"there is no production in '{settings.School}' or below it.", around);
        }

        if (settings.Without.FirstOrDefault(w => school.FolderOf(w) is null) is { } unknown)
        {
            return WrongUse.Print($"there is no production '{unknown}' to leave here.", around);
        }

        var without = settings.Without.Select(w => school.FolderOf(w)!).ToHashSet(StringComparer.Ordinal);
        var plan = ShipmentPlan.Make(
            school.Productions,
            records.Records,
            new ShipmentWishes(settings.SentOn ?? DateOnly.FromDateTime(around.Made.DateTime))
            {
                Lab = settings.Lab,
                BoxHolds = settings.Box,
                SharedBy = settings.SharedBy,
                Without = without,
                Taken = records.Taken,
            }
        );
        if (settings.Lab is { } lab && !plan.Labs.Any(l => LabNames.Plain(l) == LabNames.Plain(lab)))
        {
            return WrongUse.Print(NoSuchLab(lab, plan), around);
        }

        var faults = school.Standing(school.Faults(without).Concat(plan.Faults)).OrderBy(f => f.Level != Level.Error).ToList();
        Print(faults, school.LineOf);
        if (faults.Exists(f => f.Level == Level.Error))
        {
            around.Error.WriteLine("Nothing was shipped: put the errors right first.");
            return ExitStatus.ErrorsFound;
        }

        return Make(plan, school, work);
    }

    int Make(ShipmentPlan plan, ShippingSchool school, WorkFolder? work)
    {
        if (plan.Shipments.IsEmpty || work is null)
        {
            ShipPrinter.Print(plan, settings.IsDryRun, around);
            return ExitStatus.Well;
        }

        around.Progress.Begin("printing");
        var options = new PrintOptions(around.Made, Files.Templates(settings.Templates, around));
        var changes = new List<FileChange>();
        var findings = new List<Finding>();
        foreach (var shipment in plan.Shipments)
        {
            var printed = ShipmentPrinter.Print(
                new ShipmentPapers(
                    shipment,
                    ShipmentBill.Of(shipment, settings.SharedBy),
                    plan.LeftOut,
                    ShipmentFile.Write(shipment, Digest),
                    Digest
                )
                {
                    Waived = school.Waived,
                },
                options
            );
            findings.AddRange(printed.Faults);
            changes.AddRange(
                printed.Files.Select(f => new FileChange($"{settings.Shipments}/{shipment.Id}/{f.Name}", [.. f.Bytes], FileState.Nothing))
            );
        }

        Print(findings, (_, _) => null);
        if (findings.Exists(f => f.Level == Level.Error))
        {
            around.Error.WriteLine("Nothing was shipped: a paper could not be printed.");
            return ExitStatus.ErrorsFound;
        }

        around.Progress.Begin("writing the consignment");
        work.Put(changes);
        ShipPrinter.Print(plan, isDryRun: false, around);
        ShipPrinter.PrintFolders(plan, settings.School, settings.Shipments, around);
        return ExitStatus.Well;
    }

    void Print(IEnumerable<Finding> findings, Func<string, int, string?> lineOf)
    {
        var text = new FindingText(new Ink(around.Colour), around, lineOf);
        foreach (var line in findings.SelectMany(text.Lines))
        {
            around.Out.WriteLine(line);
        }
    }

    // Of the file as it is on the disk, so that sha256sum can compare it later.
    string Digest(PackedCan can)
    {
        if (!_digests.TryGetValue(can, out var digest))
        {
            var file = Path.Combine(_school, can.Production.Folder, can.Roll.Roll.Place.File);
            _digests[can] = digest = FileState.Of(FileState.Bytes(file).AsSpan());
        }

        return digest;
    }

    static string NoSuchLab(string lab, ShipmentPlan plan) =>
        $"no production here names a lab '{lab}'. "
        + (
            Likeness.Nearest(lab, plan.Labs) is { } near ? $"Did you mean {near}?"
            : plan.Labs.IsEmpty ? "None names any."
            : $"There are: {string.Join(", ", plan.Labs)}."
        );
}
