using Spoolbook.Reading.Keys;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

static class RollReader
{
    /// <summary>The roll; null where its name or its loading cannot be read.</summary>
    public static Roll? Read(MapReader map)
    {
        var name = map.Value(RollKeys.Roll);
        map.Context.Findings.Roll = name?.Value;
        var roll = Read(map, name);
        map.Context.Findings.Roll = null;
        return roll;
    }

    static Roll? Read(MapReader map, Located<string>? name)
    {
        var load = map.Map(RollKeys.Load) is { } loading ? Load(loading) : null;
        var log = new LogReader(map.Context, load).Read(map.Items(RollKeys.Log));
        var unload = map.Map(RollKeys.Unload) is { } unloading ? Unload(unloading) : null;
        map.Context.Findings.SparesRoll = true;
        var totals = map.Map(RollKeys.Totals) is { } boxes ? Totals(boxes) : null;
        map.Context.Findings.SparesRoll = false;
        var order = map.Map(RollKeys.Lab) is { } lab ? Order(lab) : null;
        var accept = WaiverReader.ReadAll(map, RollKeys.Accept);
        return name is null || load is null
            ? map.LetGo<Roll>()
            : new Roll(map.Head)
            {
                Name = name,
                Lot = map.Value(RollKeys.Lot),
                Unit = map.Value(RollKeys.Unit),
                ShortEndOf = map.Value(RollKeys.ShortEndOf),
                Length = map.Value(RollKeys.Length),
                Body = map.Value(RollKeys.Body),
                Rated = map.Value(RollKeys.Rated),
                Practice = map.Value(RollKeys.Practice),
                Load = load,
                Log = log,
                Unload = unload,
                Totals = totals,
                Lab = order,
                Accept = accept,
            };
    }

    static Load? Load(MapReader map) =>
        map.Value(LoadKeys.On) is not { } on
            ? map.LetGo<Load>()
            : new Load(map.Head)
            {
                On = on,
                Day = map.Value(LoadKeys.Day),
                By = map.Value(LoadKeys.By),
                Light = map.Value(LoadKeys.Light),
                Head = map.Value(LoadKeys.Head),
                LoopsSet = map.Value(LoadKeys.Loops),
                PlateClosed = map.Value(LoadKeys.Plate),
                SlotFilled = map.Value(LoadKeys.Slot),
                Ready = map.Value(LoadKeys.Ready),
                NotReady = map.Values(LoadKeys.Except),
                SpeedAfter = map.Value(LoadKeys.SpeedAfter),
                Line = map.Value(LoadKeys.Line),
            };

    static Unload? Unload(MapReader map) =>
        map.Value(UnloadKeys.On) is not { } on
            ? map.LetGo<Unload>()
            : new Unload(map.Head)
            {
                On = on,
                Day = map.Value(UnloadKeys.Day),
                By = map.Value(UnloadKeys.By),
                Light = map.Value(UnloadKeys.Light),
                Tail = map.Value(UnloadKeys.Tail),
                ShortEnd = map.Value(UnloadKeys.ShortEnd),
                Left = map.Value(UnloadKeys.Left),
                Line = map.Value(UnloadKeys.Line),
            };

    static SheetTotals Totals(MapReader map) =>
        new(map.Head)
        {
            Good = map.Value(TotalsKeys.Good),
            Hold = map.Value(TotalsKeys.Hold),
            NoGood = map.Value(TotalsKeys.NoGood),
            Waste = map.Value(TotalsKeys.Waste),
            ShortEnd = map.Value(TotalsKeys.ShortEnd),
            Loaded = map.Value(TotalsKeys.Loaded),
            Takes = map.Value(TotalsKeys.Takes),
        };

    static RollOrder Order(MapReader map) =>
        new(map.Head)
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
