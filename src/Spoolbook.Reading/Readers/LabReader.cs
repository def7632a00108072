using System.Collections.Immutable;
using Spoolbook.Reading.Keys;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>The lab and its rates.</summary>
static class LabReader
{
    public static Lab Lab(MapReader map) =>
        new(map.Head)
        {
            Name = map.Value(LabKeys.Name),
            Address = map.Values(LabKeys.Address),
            Contact = map.Values(LabKeys.Contact),
            Processes = map.Values(LabKeys.Processes),
            PushMost = map.Value(LabKeys.PushMost),
            ReturnTo = map.Values(LabKeys.ReturnTo),
            BillTo = map.Values(LabKeys.BillTo),
            InDoubt = map.Values(LabKeys.InDoubt),
            Agreed = map.Values(LabKeys.Agreed),
            Services = map.Values(LabKeys.Services),
            NeededBy = map.Value(LabKeys.NeededBy),
            Days = map.Value(LabKeys.Days),
            TakesInOn = map.Values(LabKeys.TakesInOn),
            Deliver = map.Map(LabKeys.Deliver) is { } deliver ? Deliver(deliver) : null,
            Consignments = [.. map.Maps(LabKeys.Consignments).OfType<MapReader>().Select(Consignment)],
        };

    static Deliver Deliver(MapReader map) =>
        new(map.Head)
        {
            Raster = map.Value(DeliverKeys.Raster),
            Bits = map.Value(DeliverKeys.Bits),
            IsLog = map.Value(DeliverKeys.Log),
            Rate = map.Value(DeliverKeys.Rate),
            Framing = map.Value(DeliverKeys.Framing),
            Overscan = map.Value(DeliverKeys.Overscan),
            Takes = map.Value(DeliverKeys.Takes),
            Naming = map.Value(DeliverKeys.Naming),
            FileType = map.Value(DeliverKeys.FileType),
            Drive = map.Value(DeliverKeys.Drive),
            FrameSize = map.Value(DeliverKeys.FrameSize),
            Sound = map.Value(DeliverKeys.Sound),
            SoundRatio = map.Value(DeliverKeys.SoundRatio),
        };

    static Consignment Consignment(MapReader map) =>
        new(map.Head)
        {
            SentOn = map.Value(ConsignmentKeys.Sent),
            Rolls = map.Values(ConsignmentKeys.Rolls),
            How = map.Value(ConsignmentKeys.How),
            Boxes = map.Value(ConsignmentKeys.Boxes),
            Receipt = map.Value(ConsignmentKeys.Receipt),
        };

    public static Rates? Rates(MapReader map)
    {
        var processes = map.Maps(RatesKeys.Process).OfType<MapReader>().Select(Rate).OfType<ProcessRate>().ToImmutableArray();
        return map.Value(RatesKeys.Currency) is { } currency ? Rates(map, currency, processes) : map.LetGo<Rates>();
    }

    static Rates Rates(MapReader map, Located<string> currency, ImmutableArray<ProcessRate> processes) =>
        new(map.Head)
        {
            Currency = currency,
            Processes = processes,
            MinimumPer = map.Value(RatesKeys.MinimumPer),
            PushPerStop = map.Value(RatesKeys.PushStop),
            PrepPerRoll = map.Value(RatesKeys.PrepRoll),
            Scan = ByLength(map, RatesKeys.ScanFoot, RatesKeys.ScanMetre),
            ScanPerHour = map.Value(RatesKeys.ScanHour),
            Workprint = ByLength(map, RatesKeys.WorkprintFoot, RatesKeys.WorkprintMetre),
            Shipping = map.Value(RatesKeys.Shipping),
            Tax = map.Value(RatesKeys.Tax),
        };

    static ProcessRate? Rate(MapReader map) =>
        (map.Value(ProcessRateKeys.Process), ByLength(map, ProcessRateKeys.Foot, ProcessRateKeys.Metre)) is ({ } process, { } rate)
            ? new ProcessRate(map.Head, process, rate, map.Value(ProcessRateKeys.Minimum))
            : map.LetGo<ProcessRate>();

    static LengthRate? ByLength(MapReader map, ValueKey<decimal> foot, ValueKey<decimal> metre) =>
        map.Value(foot) is { } perFoot ? new LengthRate(perFoot, LengthUnit.Feet)
        : map.Value(metre) is { } perMetre ? new LengthRate(perMetre, LengthUnit.Metres)
        : null;
}
