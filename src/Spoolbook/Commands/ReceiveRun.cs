using System.Collections.Immutable;
using System.Text;
using Spoolbook.Printing;
using Spoolbook.Reading.Files;
using Spoolbook.Reading.Shipments;
using Spoolbook.Shipping;
using Spoolbook.Shoot.Shipments;
using Spoolbook.Writing;

namespace Spoolbook.Commands;

/// <summary>Marks in the records what came back, and says what is missing.</summary>
internal sealed class ReceiveRun(ReceiveSettings settings, CommandEnvironment around)
{
    readonly string _school = Path.GetFullPath(Path.Combine(around.Folder, settings.School));
    readonly List<string> _objections = [];

    public int Run()
    {
        if (!settings.Marks)
        {
            WorkFolder.Settle(_school, "receive", around);
            return Say(ShipmentRecords.Read(_school, settings.Shipments));
        }

        using var work = WorkFolder.Open(_school, "receive", around);
        var records = ShipmentRecords.Read(_school, settings.Shipments);
        if (records.HasErrors)
        {
            return Say(records);
        }

        if (Meant(records.Records) is not { } meant)
        {
            return WrongUse.Print(NoSuchShipment(records.Records), around);
        }

        var returns = Returns(meant);
        if (returns is null)
        {
            return ExitStatus.WrongUse;
        }

        if (Changes(returns) is not { } changes)
        {
            return ExitStatus.ErrorsFound;
        }

        around.Progress.Begin("writing the record");
        work.Put(changes);
        ShipPrinter.Print(returns.Select(r => (r.Record, r.Back)), around);
        var after = ShipmentRecords.Read(_school, settings.Shipments);
        var said = Say(after);
        foreach (var objection in _objections)
        {
            around.Error.WriteLine($"spoolbook: {Plain.Escaped(objection)}");
        }

        return _objections.Count > 0 ? ExitStatus.ErrorsFound : said;
    }

    // By its whole name, or by what only its name begins with.
    IReadOnlyList<ShipmentRecord>? Meant(ImmutableArray<ShipmentRecord> records)
    {
        if (settings.Shipment is not { } named)
        {
            return records;
        }

        var begin = records.Where(r => r.Id.StartsWith(named, StringComparison.OrdinalIgnoreCase)).ToList();
        return records.Where(r => string.Equals(r.Id, named, StringComparison.OrdinalIgnoreCase)).ToList() is { Count: 1 } exact ? exact
            : begin.Count == 1 ? begin
            : null;
    }

    string NoSuchShipment(ImmutableArray<ShipmentRecord> records) =>
        $"there is no one consignment '{settings.Shipment}'. "
        + (records.IsEmpty ? "None has gone." : $"There are: {string.Join(", ", records.Select(r => r.Id))}.");

    // Null where the command line means nothing.
    List<(ShipmentRecord Record, CanReturn Back)>? Returns(IReadOnlyList<ShipmentRecord> records)
    {
        var found = new List<(ShipmentRecord Record, ShippedCan Can, CanState State)>();
        if (settings.Box is not null || settings.All)
        {
            var open = records.Where(r => r.Missing.Any()).ToList();
            if (settings.Box is not null && open.Count > 1)
            {
                WrongUse.Print($"say which consignment: --shipment {string.Join(" or ", open.Select(r => r.Id))}.", around);
                return null;
            }

            found.AddRange(
                open.SelectMany(r =>
                    r.Missing.Where(c => settings.Box is not { } box || c.Box == box).Select(c => (r, c, CanState.Processed))
                )
            );
            if (settings.Box is { } number && found.Count == 0)
            {
                _objections.Add($"nothing of box {number} is missing.");
            }
        }

        found.AddRange(Find(Typed(), records, CanState.Processed));
        found.AddRange(Find(settings.Unprocessed, records, CanState.Unprocessed));
        found.AddRange(Find(settings.GoesOn, records, CanState.GoesOn));
        var cans = found.GroupBy(f => (f.Record.Id, f.Can.Code)).Select(g => g.Last()).ToList();
        if ((settings.Lights.Count > 0 || settings.Notes.Count > 0) && cans.Count != 1)
        {
            WrongUse.Print("--lights and --note are about one can: name that can alone.", around);
            return null;
        }

        return
        [
            .. from can in cans
            let before = can.Record.ReturnOf(can.Can)
            where IsNews(can.Can, before, can.State)
            select (
                can.Record,
                new CanReturn(default, can.Can.Code, settings.On ?? DateOnly.FromDateTime(around.Made.DateTime))
                {
                    By = settings.By,
                    State = can.State,
                    Lights = [.. settings.Lights.Select(l => (l.Split(' ', 2)[0], l.Split(' ', 2)[^1].Trim()))],
                    Faults = [.. settings.Notes.Select(ShipmentFile.FaultOf)],
                }
            ),
        ];
    }

    bool IsNews(ShippedCan can, CanReturn? before, CanState state)
    {
        if (before is null || before.State != state || settings.Lights.Count > 0 || settings.Notes.Count > 0)
        {
            return true;
        }

        around.Out.WriteLine($"{Plain.Escaped(can.Code)} is back already, since {before.On:yyyy-MM-dd}.");
        return false;
    }

    // A hand-held reader types each code and then the Enter key.
    IEnumerable<string> Typed()
    {
        foreach (var can in settings.Cans)
        {
            if (can != "-")
            {
                yield return can;
                continue;
            }

            while (around.In.ReadLine() is { } line)
            {
                if (line.Trim() is { Length: > 0 } code)
                {
                    yield return code;
                }
            }
        }
    }

    IEnumerable<(ShipmentRecord Record, ShippedCan Can, CanState State)> Find(
        IEnumerable<string> typed,
        IReadOnlyList<ShipmentRecord> records,
        CanState state
    )
    {
        foreach (var text in typed)
        {
            var all = TypedCans.Find(text, records);
            var open = all.Where(a => a.Record.ReturnOf(a.Can) is null).ToList();

            // A can that went twice is the later one's.
            var codes = all.Select(a => a.Can.Code).Distinct().Count();
            if (open.Count == 1 || (codes == 1 && all.Length > 0))
            {
                var (record, can) = open.Count > 0 ? open[^1] : all[^1];
                yield return (record, can, state);
            }
            else if (all.Length > 0)
            {
                _objections.Add($"'{text}' is in several consignments: type the whole code, or say --shipment.");
            }
            else
            {
                _objections.Add(
                    TypedCans.Misread(text, records) is { } near
                        ? $"'{text}' is no can that went. Its last character does not fit: {near.Code} went."
                        : $"'{text}' is no can that went: it is somebody else's, or was never shipped with spoolbook ship."
                );
            }
        }
    }

    List<FileChange>? Changes(List<(ShipmentRecord Record, CanReturn Back)> returns)
    {
        var changes = new List<FileChange>();
        foreach (var record in returns.GroupBy(r => r.Record))
        {
            var name = record.Key.Place.File;
            var bytes = FileState.Bytes(Path.Combine(_school, name));
            if (
                TextDecoder.Decode(bytes).Text is not { } text
                || ShipmentFile.WithReturns(name, text, [.. record.Select(r => r.Back)]) is not { } added
            )
            {
                around.Error.WriteLine(
                    $"spoolbook: {Plain.Escaped(name)} is not in the form that ship wrote it: nothing was added. "
                        + "Write `received:` as a list with a line for each can."
                );
                return null;
            }

            changes.Add(new FileChange(name, Encoding.UTF8.GetBytes(added), FileState.Of(bytes.AsSpan())));
        }

        return changes;
    }

    int Say(ShipmentRecords records)
    {
        records.PrintFindings(around);
        if (records.HasErrors)
        {
            around.Error.WriteLine("Nothing was marked: a record cannot be read.");
            return ExitStatus.ErrorsFound;
        }

        ShipPrinter.Print(Meant(records.Records) ?? records.Records, DateOnly.FromDateTime(around.Made.DateTime), around);
        return ExitStatus.Well;
    }
}
