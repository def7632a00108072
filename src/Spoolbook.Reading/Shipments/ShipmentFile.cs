using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Spoolbook.Reading.Editing;
using Spoolbook.Reading.Files;
using Spoolbook.Reading.Keys;
using Spoolbook.Reading.Readers;
using Spoolbook.Reading.Trees;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Shipments;

namespace Spoolbook.Reading.Shipments;

/// <summary>The record of a consignment, as a file: read, written when it goes, and added to when cans come back.</summary>
public static class ShipmentFile
{
    /// <summary>The name of the file in the consignment's folder.</summary>
    public const string Name = "consignment.yaml";

    /// <summary>Reads a record.</summary>
    /// <param name="name">Where it is, from the school's folder.</param>
    public static ReadShipment Read(string name, FileText file)
    {
        var findings = new FindingList();
        if (file.Text is null || file.Fault is not null)
        {
            var fault = file.Fault!;
            findings.Add(fault.Check, fault.Message, new Place(name, fault.Line, fault.Column, 0), fault.Help);
            return new ReadShipment(null, findings.InOrder(), SourceTexts.Nothing);
        }

        var source = new SourceFile(name, file.Text);
        var record = Root(source, findings) is { } map ? Record(map) : null;
        var found = findings.InOrder();
        return new ReadShipment(found.Any(f => f.Level == Level.Error) ? null : record, found, new SourceTexts([source]));
    }

    /// <summary>Writes the record of a consignment that goes.</summary>
    /// <param name="digest">The digest of the file that a can's roll is written in.</param>
    public static string Write(Shipment shipment, Func<PackedCan, string> digest)
    {
        var text = new StringBuilder();
        text.Append("# What went to the lab, and what came back. spoolbook ship and spoolbook receive write it.\n");
        Line(FileKeys.Version, "1");
        Line(ShipmentKeys.Id, Quoted(shipment.Id));
        Line(ShipmentKeys.Lab, Quoted(shipment.Lab));
        Line(ShipmentKeys.Sent, Day(shipment.SentOn));
        if (shipment.BackBy is { } back)
        {
            Line(ShipmentKeys.BackBy, Day(back));
        }

        Line(ShipmentKeys.BoxHolds, Number(shipment.BoxHolds));
        Line(ShipmentKeys.Count, Number(shipment.Cans.Length));
        Line(ShipmentKeys.Feet, shipment.Feet.ToText(1));
        text.Append(ShipmentKeys.Cans.Name + ":\n");
        foreach (var can in shipment.Cans)
        {
            Item(
                text,
                "",
                (ShipmentKeys.Number, Number(can.Number)),
                (ShipmentKeys.Box, Number(can.Box)),
                (ShipmentKeys.Code, Quoted(can.Code.ToString())),
                (ShipmentKeys.Production, Quoted(can.Production.Folder)),
                (ShipmentKeys.Roll, Quoted(can.Roll.Roll.Name.Value)),
                (ShipmentKeys.Title, Quoted(can.Production.Title)),
                (ShipmentKeys.Process, can.Process is { } process ? Quoted(process) : ""),
                (ShipmentKeys.Push, can.Push == 0 ? "" : can.Push.ToString(CultureInfo.InvariantCulture)),
                (ShipmentKeys.Frames, Number(can.Roll.Tally.InCan.Frames)),
                (ShipmentKeys.Record, digest(can))
            );
        }

        return text.ToString();

        void Line(Key key, string value) => text.Append(key.Name + ": " + value + "\n");
    }

    /// <summary>The text of a record with what came back added behind what is there; null where the file's form does not let it.</summary>
    public static string? WithReturns(string name, string text, IReadOnlyList<CanReturn> returns)
    {
        var before = Read(name, FileText.Of(text)).Record;
        if (before is null || TreeReader.Read(new SourceFile(name, text), new FindingList()) is not MapNode root)
        {
            return null;
        }

        var entry = root.WrittenEntry(ShipmentKeys.Received.Name);
        var end = text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        var (at, lead, indent) = entry switch
        {
            null => (text.Length, ShipmentKeys.Received.Name + ":" + end, "  "),
            { Value: ListNode { InBrackets: false, Written: [.., var last] } list } => (
                EndOfLine(text, last.End),
                "",
                new string(' ', list.Start - StartOfLine(text, list.Start))
            ),
            { Value: ScalarNode { IsBlank: true } blank } => (EndOfLine(text, blank.End), "", "  "),
            _ => (-1, "", ""),
        };
        if (at < 0)
        {
            return null;
        }

        var added = new StringBuilder();
        foreach (var back in returns)
        {
            Item(
                added,
                indent[..^Math.Min(2, indent.Length)],
                (ShipmentKeys.Code, Quoted(back.Can)),
                (ShipmentKeys.On, Day(back.On)),
                (ShipmentKeys.By, back.By is { } by ? Quoted(by) : ""),
                (ShipmentKeys.State, back.State == CanState.Processed ? "" : ShipmentKeys.States.First(s => s.Value == back.State).Word),
                (ShipmentKeys.Lights, List(back.Lights.Select(l => $"{l.Slate} {l.Lights}"))),
                (ShipmentKeys.Faults, List(back.Faults.Select(f => f.At.Length == 0 ? f.Note : $"{f.At} {f.Note}")))
            );
        }

        var newLine = at > 0 && text[at - 1] is not ('\n' or '\r') ? end : "";
        var whole = text[..at] + newLine + lead + added.Replace("\n", end) + text[at..];

        // What was there must still say what it said, and what is new must be what came back.
        return
            Read(name, FileText.Of(whole)).Record is { } after
            && after.Cans.Length == before.Cans.Length
            && after.Received.Length == before.Received.Length + returns.Count
            && after
                .Received.Select(r => (r.Can, r.On, r.State))
                .SequenceEqual(before.Received.Concat(returns).Select(r => (r.Can, r.On, r.State)))
            ? whole
            : null;
    }

    static MapReader? Root(SourceFile source, FindingList findings) =>
        FileOpener.Root(source, findings) is { } root
            ? MapReader.Alone(root, ShipmentKeys.Table, new ReadingContext(findings, _ => PictureFile.Missing))
            : null;

    static ShipmentRecord? Record(MapReader map)
    {
        ImmutableArray<ShippedCan> cans = [.. map.Maps(ShipmentKeys.Cans).OfType<MapReader>().Select(Can).OfType<ShippedCan>()];
        ImmutableArray<CanReturn> received = [.. map.Maps(ShipmentKeys.Received).OfType<MapReader>().Select(Return).OfType<CanReturn>()];
        return map.Value(ShipmentKeys.Id) is { } id && map.Value(ShipmentKeys.Lab) is { } lab && map.Value(ShipmentKeys.Sent) is { } sent
            ? new ShipmentRecord(map.Head, id.Value, lab.Value, sent.Value)
            {
                BackBy = map.Value(ShipmentKeys.BackBy)?.Value,
                BoxHolds = map.Value(ShipmentKeys.BoxHolds)?.Value ?? ShipmentWishes.UsualBox,
                Cans = cans,
                Received = received,
            }
            : null;
    }

    static ShippedCan? Can(MapReader map) =>
        map.Value(ShipmentKeys.Number) is { } number
        && map.Value(ShipmentKeys.Box) is { } box
        && map.Value(ShipmentKeys.Code) is { } code
        && map.Value(ShipmentKeys.Production) is { } production
        && map.Value(ShipmentKeys.Roll) is { } roll
            ? new ShippedCan(map.Head, number.Value, box.Value, code.Value, production.Value, roll.Value)
            {
                Title = map.Value(ShipmentKeys.Title)?.Value ?? "",
                Process = map.Value(ShipmentKeys.Process)?.Value,
                Push = map.Value(ShipmentKeys.Push)?.Value ?? 0,
                Frames = map.Value(ShipmentKeys.Frames)?.Value ?? 0,
                Record = map.Value(ShipmentKeys.Record)?.Value ?? "",
            }
            : null;

    static CanReturn? Return(MapReader map) =>
        map.Value(ShipmentKeys.Code) is { } code && map.Value(ShipmentKeys.On) is { } on
            ? new CanReturn(map.Head, code.Value, on.Value)
            {
                By = map.Value(ShipmentKeys.By)?.Value,
                State = map.Value(ShipmentKeys.State)?.Value ?? CanState.Processed,
                Lights = [.. map.Values(ShipmentKeys.Lights).Select(l => Parted(l.Value))],
                Faults = [.. map.Values(ShipmentKeys.Faults).Select(f => FaultOf(f.Value))],
            }
            : null;

    /// <summary>A fault as it is typed: with a footage in front, <c>31+12 Scratch on the left</c>, or without.</summary>
    public static FaultOnFilm FaultOf(string text)
    {
        var (first, rest) = Parted(text);
        return rest.Length > 0 && first.Length > 0 && char.IsAsciiDigit(first[0]) && first.All(c => char.IsAsciiDigit(c) || c is '+' or '.')
            ? new FaultOnFilm(first, rest)
            : new FaultOnFilm("", text);
    }

    static (string First, string Behind) Parted(string text) =>
        text.Split(' ', 2) is [var first, var rest] ? (first, rest.Trim()) : (text, "");

    static void Item(StringBuilder text, string indent, params (Key Key, string Value)[] values) =>
        text.Append(indent + "  - {")
            .AppendJoin(", ", values.Where(v => v.Value.Length > 0).Select(v => v.Key.Name + ": " + v.Value))
            .Append("}\n");

    static string List(IEnumerable<string> values) =>
        values.ToList() is { Count: > 0 } some ? $"[{string.Join(", ", some.Select(Quoted))}]" : "";

    static string Quoted(string text) => YamlQuoting.Quote(text);

    static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);

    static int StartOfLine(string text, int at) => at == 0 ? 0 : text.LastIndexOf('\n', at - 1) + 1;

    // Behind a comment at its end too.
    static int EndOfLine(string text, int at) => text.IndexOf('\n', at) is >= 0 and var end ? end + 1 : text.Length;
}
