using System.Collections.Immutable;
using Spoolbook.Reading.Keys;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>Bodies, lenses and everything else that must go back.</summary>
static class KitReader
{
    public static Body? Body(MapReader map)
    {
        var marks = map.Maps(BodyKeys.Marks).OfType<MapReader>().Select(ShutterMark).OfType<ShutterMark>().ToImmutableArray();
        if (map.Value(BodyKeys.Body) is not { } name)
        {
            return map.LetGo<Body>();
        }

        var speeds = map.Values(BodyKeys.Speeds);
        return new Body(map.Head)
        {
            Name = name,
            What = map.Value(BodyKeys.What),
            Serial = map.Value(BodyKeys.Serial),
            Speeds = speeds,
            Slowest = map.Value(BodyKeys.Slowest) ?? speeds.MinBy(s => s.Value.FramesPerSecond),
            Fastest = map.Value(BodyKeys.Fastest) ?? speeds.MaxBy(s => s.Value.FramesPerSecond),
            ShutterAngle = map.Value(BodyKeys.Shutter),
            ShutterMarks = marks,
            FinderLoss = map.Value(BodyKeys.FinderLoss),
            FullWind = map.Value(BodyKeys.FullWind),
            Spring = map.Value(BodyKeys.Spring),
            LoadingSpeed = map.Value(BodyKeys.LoadingSpeed),
            CounterWraps = map.Value(BodyKeys.CounterWraps),
            Takes = map.Value(BodyKeys.Takes),
            Turret = map.Values(BodyKeys.Turret),
            Sprockets = map.Value(BodyKeys.Sprockets),
            Winding = map.Value(BodyKeys.Winding),
            Returned = Returned(map),
        };
    }

    public static Lens? Lens(MapReader map) =>
        map.Value(LensKeys.Lens) is not { } name
            ? map.LetGo<Lens>()
            : new Lens(map.Head)
            {
                Name = name,
                What = map.Value(LensKeys.What),
                Serial = map.Value(LensKeys.Serial),
                Focal = map.Value(LensKeys.Focal),
                Widest = map.Value(LensKeys.Widest),
                Smallest = map.Value(LensKeys.Smallest),
                Nearest = map.Value(LensKeys.Nearest),
                MadeFor = map.Value(LensKeys.MadeFor),
                Returned = Returned(map),
            };

    public static Filter? Filter(MapReader map) =>
        map.Value(FilterKeys.Filter) is not { } name
            ? map.LetGo<Filter>()
            : new Filter(
                map.Head,
                name,
                map.Value(FilterKeys.What),
                map.Value(FilterKeys.Stops),
                map.Value(FilterKeys.Mireds),
                Returned(map)
            )
            {
                Serial = map.Value(FilterKeys.Serial),
            };

    public static LightMeter? Meter(MapReader map) =>
        map.Value(MeterKeys.Meter) is not { } name
            ? map.LetGo<LightMeter>()
            : new LightMeter(map.Head, name, map.Value(MeterKeys.What), map.Value(MeterKeys.Serial), Returned(map));

    public static Motor? Motor(MapReader map) =>
        map.Value(MotorKeys.Motor) is not { } name
            ? map.LetGo<Motor>()
            : new Motor(map.Head, name, map.Value(MotorKeys.What), map.Values(MotorKeys.Speeds), map.Value(MotorKeys.Sync), Returned(map))
            {
                Serial = map.Value(MotorKeys.Serial),
            };

    public static KitItem? Item(MapReader map) =>
        map.Value(ItemKeys.Item) is not { } name
            ? map.LetGo<KitItem>()
            : new KitItem(map.Head, name, map.Value(ItemKeys.TakeUp), Returned(map)) { Serial = map.Value(ItemKeys.Serial) };

    public static Loan Loan(MapReader map) =>
        new(map.Head)
        {
            Owner = map.Value(LoanKeys.Owner),
            BorrowedBy = map.Value(LoanKeys.BorrowedBy),
            On = map.Value(LoanKeys.On),
            Due = map.Value(LoanKeys.Due),
            BackOn = map.Value(LoanKeys.BackOn),
            Care = map.Values(LoanKeys.Care),
        };

    static ShutterMark? ShutterMark(MapReader map) =>
        (map.Value(MarkKeys.Mark), map.Value(MarkKeys.Open)) is ({ } name, { } open)
            ? new ShutterMark(map.Head, name, open, map.Value(MarkKeys.Stops))
            : map.LetGo<ShutterMark>();

    static Returned Returned(MapReader map) =>
        new(map.Value(ReturnKeys.Out)?.Value ?? 1, map.Value(ReturnKeys.Back), map.Value(ReturnKeys.Note))
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
