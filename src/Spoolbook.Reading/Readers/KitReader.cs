using Spoolbook.Reading.Keys;
using Spoolbook.Reading.Maps;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>Bodies, lenses and everything else that must go back.</summary>
static class KitReader
{
    public static Body? Body(MapReader map)
    {
        var speeds = map.Values(BodyKeys.Speeds);
        return map.Kept(new Body(map.Head)
        {
            Name = map.Must(BodyKeys.Body),
            What = map.Value(BodyKeys.What),
            Serial = map.Value(BodyKeys.Serial),
            Speeds = speeds,
            Slowest = map.Value(BodyKeys.Slowest) ?? speeds.MinBy(s => s.Value.FramesPerSecond),
            Fastest = map.Value(BodyKeys.Fastest) ?? speeds.MaxBy(s => s.Value.FramesPerSecond),
            ShutterAngle = map.Value(BodyKeys.Shutter),
            ShutterMarks = [.. map.Maps(BodyKeys.Marks).OfType<MapReader>().Select(ShutterMark).OfType<ShutterMark>()],
            FinderLoss = map.Value(BodyKeys.FinderLoss),
            FullWind = map.Value(BodyKeys.FullWind),
            Spring = map.Value(BodyKeys.Spring),
            LoadingSpeed = map.Value(BodyKeys.LoadingSpeed),
            CounterWraps = map.Value(BodyKeys.CounterWraps),
            Takes = map.Value(BodyKeys.Takes),
            Returned = Returned(map),
        });
    }

    public static Lens? Lens(MapReader map) => map.Kept(new Lens(map.Head)
    {
        Name = map.Must(LensKeys.Lens),
        What = map.Value(LensKeys.What),
        Serial = map.Value(LensKeys.Serial),
        Focal = map.Value(LensKeys.Focal),
        Widest = map.Value(LensKeys.Widest),
        Smallest = map.Value(LensKeys.Smallest),
        Nearest = map.Value(LensKeys.Nearest),
        Returned = Returned(map),
    });

    public static Filter? Filter(MapReader map) =>
        map.Kept(new Filter(map.Head, map.Must(FilterKeys.Filter), map.Value(FilterKeys.What), map.Value(FilterKeys.Stops), map.Value(FilterKeys.Mireds), Returned(map))
        {
            Serial = map.Value(FilterKeys.Serial),
        });

    public static LightMeter? Meter(MapReader map) =>
        map.Kept(new LightMeter(map.Head, map.Must(MeterKeys.Meter), map.Value(MeterKeys.What), map.Value(MeterKeys.Serial), Returned(map)));

    public static Motor? Motor(MapReader map) =>
        map.Kept(new Motor(map.Head, map.Must(MotorKeys.Motor), map.Value(MotorKeys.What), map.Values(MotorKeys.Speeds), map.Value(MotorKeys.Sync), Returned(map))
        {
            Serial = map.Value(MotorKeys.Serial),
        });

    public static KitItem? Item(MapReader map) => map.Kept(new KitItem(map.Head, map.Must(ItemKeys.Item), map.Value(ItemKeys.TakeUp), Returned(map))
    {
        Serial = map.Value(ItemKeys.Serial),
    });

    public static Loan Loan(MapReader map) => new(map.Head)
    {
        Owner = map.Value(LoanKeys.Owner),
        BorrowedBy = map.Value(LoanKeys.BorrowedBy),
        On = map.Value(LoanKeys.On),
        Due = map.Value(LoanKeys.Due),
        BackOn = map.Value(LoanKeys.BackOn),
        Care = map.Values(LoanKeys.Care),
    };

    static ShutterMark? ShutterMark(MapReader map) =>
        map.Kept(new ShutterMark(map.Head, map.Must(MarkKeys.Mark), map.Must(MarkKeys.Open), map.Value(MarkKeys.Stops)));

    static Returned Returned(MapReader map) => new(map.Value(ReturnKeys.Out)?.Value ?? 1, map.Value(ReturnKeys.Back), map.Value(ReturnKeys.Note))
    {
        Owner = map.Value(ReturnKeys.Owner),
        BorrowedBy = map.Value(ReturnKeys.BorrowedBy),
        Due = map.Value(ReturnKeys.Due),
        Value = map.Value(ReturnKeys.Worth),
        Kept = map.Value(ReturnKeys.Kept),
        ConditionOut = map.Value(ReturnKeys.ConditionOut),
        ConditionBack = map.Value(ReturnKeys.ConditionBack),
    };
}
