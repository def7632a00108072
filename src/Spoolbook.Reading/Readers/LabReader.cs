using Spoolbook.Reading.Keys;
using Spoolbook.Reading.Maps;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>The lab and its rates.</summary>
static class LabReader
{
    public static Lab Lab(MapReader map) => new(map.Head)
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
        Consignments = [.. map.Maps(LabKeys.Consignments).OfType<MapReader>().Select(Consignment)],
    };

    static Consignment Consignment(MapReader map) => new(map.Head)
    {
        SentOn = map.Value(ConsignmentKeys.Sent),
        Rolls = map.Values(ConsignmentKeys.Rolls),
        How = map.Value(ConsignmentKeys.How),
        Boxes = map.Value(ConsignmentKeys.Boxes),
        Receipt = map.Value(ConsignmentKeys.Receipt),
    };

    public static Rates? Rates(MapReader map) => map.Kept(new Rates(map.Head)
    {
        Currency = map.Must(RatesKeys.Currency),
        Processes = [.. map.Maps(RatesKeys.Process).OfType<MapReader>().Select(Rate).OfType<ProcessRate>()],
        PushPerStop = map.Value(RatesKeys.PushStop),
        PrepPerRoll = map.Value(RatesKeys.PrepRoll),
        ScanPerFoot = map.Value(RatesKeys.ScanFoot),
        ScanPerHour = map.Value(RatesKeys.ScanHour),
        WorkprintPerFoot = map.Value(RatesKeys.WorkprintFoot),
        Shipping = map.Value(RatesKeys.Shipping),
        Tax = map.Value(RatesKeys.Tax),
    });

    static ProcessRate? Rate(MapReader map) => map.Kept(new ProcessRate(
        map.Head,
        map.Must(ProcessRateKeys.Process),
        map.Must(ProcessRateKeys.Foot),
        map.Value(ProcessRateKeys.Minimum)));
}
