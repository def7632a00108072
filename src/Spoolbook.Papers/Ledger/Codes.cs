using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Forecasts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Ledger;

/// <summary>The short codes of the ledger and the workbook, the same in both and in every language.</summary>
static class Codes
{
    public static string Of(Mark mark) =>
        mark switch
        {
            Mark.Good => "G",
            Mark.Hold => "H",
            Mark.NoGood => "NG",
            Mark.Test => "T",
            _ => throw new ArgumentOutOfRangeException(nameof(mark)),
        };

    public static string Of(SlatePlace slate) =>
        slate switch
        {
            SlatePlace.Head => "head",
            SlatePlace.Tail => "tail",
            SlatePlace.None => "none",
            _ => throw new ArgumentOutOfRangeException(nameof(slate)),
        };

    public static string Of(ReadyPoint point) =>
        point switch
        {
            ReadyPoint.Gate => "gate",
            ReadyPoint.Loops => "loops",
            ReadyPoint.Plate => "plate",
            ReadyPoint.Slot => "slot",
            ReadyPoint.CutOff => "cut-off",
            ReadyPoint.RunTest => "run-test",
            _ => throw new ArgumentOutOfRangeException(nameof(point)),
        };

    public static string Of(Account account) =>
        account switch
        {
            Account.Good => "G",
            Account.Hold => "H",
            Account.NoGood => "NG",
            Account.Waste => "W",
            Account.ShortEnd => "SE",
            _ => throw new ArgumentOutOfRangeException(nameof(account)),
        };

    public static string Of(WasteCause cause) =>
        cause switch
        {
            WasteCause.Head => "head",
            WasteCause.Tail => "tail",
            WasteCause.Gap => "gap",
            WasteCause.RunOff => "run-off",
            WasteCause.Fog => "fog",
            WasteCause.Test => "test",
            WasteCause.End => "end",
            _ => throw new ArgumentOutOfRangeException(nameof(cause)),
        };

    public static string Of(CostStage stage) =>
        stage switch
        {
            CostStage.Bought => "bought",
            CostStage.Ordered => "ordered",
            CostStage.Committed => "committed",
            _ => throw new ArgumentOutOfRangeException(nameof(stage)),
        };

    public static string Of(CostKind kind) =>
        kind switch
        {
            CostKind.Stock => "stock",
            CostKind.Came => "came",
            CostKind.SentAway => "sent-away",
            CostKind.Process => "process",
            CostKind.Push => "push",
            CostKind.Prep => "prep",
            CostKind.Scan => "scan",
            CostKind.Workprint => "workprint",
            CostKind.Service => "service",
            CostKind.Shipping => "shipping",
            CostKind.Tax => "tax",
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };

    public static string Of(CostUnit unit) =>
        unit switch
        {
            CostUnit.Unit => "unit",
            CostUnit.Foot => "foot",
            CostUnit.Metre => "metre",
            CostUnit.Hour => "hour",
            CostUnit.Stop => "stop",
            CostUnit.Roll => "roll",
            CostUnit.Box => "box",
            CostUnit.Amount => "amount",
            _ => throw new ArgumentOutOfRangeException(nameof(unit)),
        };

    public static string Of(OpenReason reason) =>
        reason switch
        {
            OpenReason.NoRate => "no-rate",
            OpenReason.NoProcess => "no-process",
            OpenReason.OutOfRange => "out-of-range",
            _ => throw new ArgumentOutOfRangeException(nameof(reason)),
        };

    public static string Of(ForecastBasis basis) =>
        basis switch
        {
            ForecastBasis.NoList => "no-list",
            ForecastBasis.NothingLeft => "nothing-left",
            ForecastBasis.NothingFinished => "nothing-finished",
            ForecastBasis.TooFew => "too-few",
            ForecastBasis.Drawn => "drawn",
            _ => throw new ArgumentOutOfRangeException(nameof(basis)),
        };

    public static string Of(StockFault fault) =>
        fault switch
        {
            StockFault.NeverHere => "never-here",
            StockFault.HereAlready => "here-already",
            StockFault.Loaded => "loaded",
            StockFault.SentAway => "sent-away",
            StockFault.Lost => "lost",
            StockFault.Damaged => "damaged",
            StockFault.MoreThanInIt => "more-than-in-it",
            StockFault.SplitAlready => "split-already",
            StockFault.LoadedAfterwards => "loaded-afterwards",
            StockFault.LoadedBefore => "loaded-before",
            _ => throw new ArgumentOutOfRangeException(nameof(fault)),
        };

    public static string Of(FilmOrigin origin) =>
        origin switch
        {
            FilmOrigin.Bought => "bought",
            FilmOrigin.BoughtForPractice => "bought-for-practice",
            FilmOrigin.Came => "came",
            FilmOrigin.FromNoCan => "from-no-can",
            FilmOrigin.Remeasured => "remeasured",
            _ => throw new ArgumentOutOfRangeException(nameof(origin)),
        };

    public static string Of(FilmPlace place) =>
        place switch
        {
            FilmPlace.Good => "good",
            FilmPlace.Hold => "hold",
            FilmPlace.NoGood => "no-good",
            FilmPlace.Waste => "waste",
            FilmPlace.Practice => "practice",
            FilmPlace.ThrownAway => "thrown-away",
            FilmPlace.Lost => "lost",
            FilmPlace.Damaged => "damaged",
            FilmPlace.SentAway => "sent-away",
            FilmPlace.Unread => "unread",
            FilmPlace.InCamera => "in-camera",
            FilmPlace.ShortEnds => "short-ends",
            FilmPlace.Unopened => "unopened",
            _ => throw new ArgumentOutOfRangeException(nameof(place)),
        };

    public static string Of(ColourBalance balance) =>
        balance switch
        {
            ColourBalance.None => "none",
            ColourBalance.Daylight => "daylight",
            ColourBalance.Tungsten => "tungsten",
            _ => throw new ArgumentOutOfRangeException(nameof(balance)),
        };

    public static string Of(Shoot.Records.Level level) =>
        level switch
        {
            Shoot.Records.Level.Note => "note",
            Shoot.Records.Level.Warning => "warning",
            Shoot.Records.Level.Error => "error",
            _ => throw new ArgumentOutOfRangeException(nameof(level)),
        };
}
