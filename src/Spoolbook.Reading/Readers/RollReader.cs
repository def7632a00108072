using Spoolbook.Reading.Keys;
using Spoolbook.Reading.Maps;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>A roll's map to its record.</summary>
static class RollReader
{
    /// <summary>The roll; null where its name or its loading cannot be read.</summary>
    public static Roll? Read(MapReader map)
    {
        var name = map.Must(RollKeys.Roll);
        map.Context.Findings.Roll = name?.Value;
        var load = map.Map(RollKeys.Load) is { } loading ? Load(loading) : null;
        var roll = new Roll(map.Head)
        {
            Name = name!,
            Lot = map.Value(RollKeys.Lot),
            Unit = map.Value(RollKeys.Unit),
            ShortEndOf = map.Value(RollKeys.ShortEndOf),
            Length = map.Value(RollKeys.Length),
            Body = map.Value(RollKeys.Body),
            Rated = map.Value(RollKeys.Rated),
            Practice = map.Value(RollKeys.Practice),
            Load = map.Must(load),
            Log = new LogReader(map.Context, load).Read(map.Items(RollKeys.Log)),
            Unload = map.Map(RollKeys.Unload) is { } unloading ? Unload(unloading) : null,
            Lab = map.Map(RollKeys.Lab) is { } order ? Order(order) : null,
            Accept = WaiverReader.ReadAll(map, RollKeys.Accept),
        };
        map.Context.Findings.Roll = null;
        return map.Kept(roll);
    }

    static Load? Load(MapReader map) => map.Kept(new Load(map.Head)
    {
        On = map.Must(LoadKeys.On),
        Day = map.Value(LoadKeys.Day),
        By = map.Value(LoadKeys.By),
        Light = map.Value(LoadKeys.Light),
        Head = map.Value(LoadKeys.Head),
        LoopsSet = map.Value(LoadKeys.Loops),
        PlateClosed = map.Value(LoadKeys.Plate),
        SlotFilled = map.Value(LoadKeys.Slot),
        SpeedAfter = map.Value(LoadKeys.SpeedAfter),
    });

    static Unload? Unload(MapReader map) => map.Kept(new Unload(map.Head)
    {
        On = map.Must(UnloadKeys.On),
        Day = map.Value(UnloadKeys.Day),
        By = map.Value(UnloadKeys.By),
        Light = map.Value(UnloadKeys.Light),
        Tail = map.Value(UnloadKeys.Tail),
        ShortEnd = map.Value(UnloadKeys.ShortEnd),
    });

    static RollOrder Order(MapReader map) => new(map.Head)
    {
        Process = map.Value(RollOrderKeys.Process),
        Push = map.Value(RollOrderKeys.Push),
        Services = map.Values(RollOrderKeys.Services),
        Effects = map.Values(RollOrderKeys.Effects),
        SentOn = map.Value(RollOrderKeys.Sent),
        Notes = map.Value(RollOrderKeys.Notes),
        Send = map.Value(RollOrderKeys.Send),
    };
}
