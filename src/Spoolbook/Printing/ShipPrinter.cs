using System.Globalization;
using Spoolbook.Shoot.Shipments;

namespace Spoolbook.Printing;

/// <summary>What goes to labs and what came back, for people.</summary>
internal static class ShipPrinter
{
    /// <summary>What goes, box by box, and what stays.</summary>
    /// <param name="isDryRun">Whether nothing is written, so that each can is listed.</param>
    public static void Print(ShipmentPlan plan, bool isDryRun, CommandEnvironment around)
    {
        var ink = new Ink(around.Colour);
        foreach (var shipment in plan.Shipments)
        {
            Write(
                $"{ink.Bold(Plain.Escaped(shipment.Lab))}: {Plain.Count(shipment.Cans.Length, "can")}, {shipment.Feet.ToText(1)} ft, "
                    + $"{Boxes(shipment.Boxes)} of up to {shipment.BoxHolds}, from {Plain.Count(shipment.Productions.Length, "production")}"
                    + $"{(isDryRun ? " (dry run: nothing is written)" : "")}.",
                2,
                around
            );
            foreach (var work in shipment.Cans.GroupBy(c => (c.Process, c.Push)))
            {
                Write($"  {Plain.Escaped(work.Key.Process ?? "?")}{Push(work.Key.Push)}: {Plain.Count(work.Count(), "can")}", 4, around);
                foreach (var can in work.Where(_ => isDryRun))
                {
                    around.Out.WriteLine($"    {can.Number}  box {can.Box}  {Plain.Escaped(can.Code.ToString())}");
                }
            }
        }

        foreach (var reason in plan.LeftOut.GroupBy(l => l.Reason))
        {
            var rolls = reason.Select(l => $"{l.Production.Code} {l.Roll.Roll.Name.Value}");
            Write($"{Stays(reason.Key)}: {Plain.Escaped(string.Join(", ", rolls))}.", 2, around);
        }

        if (plan.Shipments.IsEmpty)
        {
            Write(
                $"{ink.Bold("Nothing to ship")}: no exposed can is waiting ({Plain.Count(plan.WentBefore, "roll")} went before).",
                2,
                around
            );
        }
    }

    /// <summary>Where the papers are.</summary>
    public static void PrintFolders(ShipmentPlan plan, string school, string folder, CommandEnvironment around)
    {
        foreach (var shipment in plan.Shipments)
        {
            var path = Path.Combine(school, folder, shipment.Id).Replace('\\', '/');
            Write($"Wrote order, labels, packing list and manifest to {Plain.Escaped(path)}/", 2, around);
        }
    }

    /// <summary>What was marked.</summary>
    public static void Print(IEnumerable<(ShipmentRecord Record, CanReturn Back)> returns, CommandEnvironment around)
    {
        foreach (var record in returns.GroupBy(r => r.Record.Id))
        {
            foreach (var state in record.GroupBy(r => r.Back.State))
            {
                var how = state.Key switch
                {
                    CanState.Unprocessed => "back unprocessed, may go again",
                    CanState.GoesOn => "goes on, may go again",
                    _ => "back",
                };
                var cans = string.Join(", ", state.Select(r => r.Back.Can));
                Write($"{Plain.Escaped(record.Key)}: {Plain.Count(state.Count(), "can")} {how}: {Plain.Escaped(cans)}.", 2, around);
            }
        }
    }

    /// <summary>What is missing of each consignment that is not back, and what is overdue.</summary>
    public static void Print(IReadOnlyList<ShipmentRecord> records, DateOnly today, CommandEnvironment around)
    {
        var ink = new Ink(around.Colour);
        if (records.Count == 0)
        {
            around.Out.WriteLine("Nothing has gone to a lab with spoolbook ship.");
            return;
        }

        var open = records.Where(r => r.Missing.Any()).ToList();
        if (open.Count == 0)
        {
            around.Out.WriteLine("Nothing is missing: every can that went is back.");
        }

        foreach (var record in open)
        {
            var missing = record.Missing.ToList();
            var due =
                record.BackBy is not { } by ? ""
                : record.IsOverdue(today) ? ", " + ink.Red($"overdue since {Day(by)}")
                : $", back by {Day(by)}";
            Write(
                $"{ink.Bold(Plain.Escaped(record.Id))}: {record.Cans.Length - missing.Count} of "
                    + $"{Plain.Count(record.Cans.Length, "can")} back{due}. Missing:",
                2,
                around
            );
            foreach (var box in missing.GroupBy(c => c.Box))
            {
                Write($"  box {box.Key}: {Plain.Escaped(string.Join(", ", box.Select(c => c.Code)))}", 4, around);
            }
        }
    }

    static string Stays(LeftOutReason reason) =>
        reason switch
        {
            LeftOutReason.InCamera => "Still in a camera, so it stays here",
            LeftOutReason.NoLab => "Stays here, because its production names no lab",
            LeftOutReason.Without => "Stays here this time",
            _ => "Held back",
        };

    static string Push(double push) => push == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $", push {push:+0.##;-0.##}");

    static string Boxes(int count) => string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? "box" : "boxes")}");

    static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    static void Write(string line, int indent, CommandEnvironment around)
    {
        foreach (var part in WrappedText.On(around, line, indent))
        {
            around.Out.WriteLine(part);
        }
    }
}
