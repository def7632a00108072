using Spoolbook.Film;
using Spoolbook.Film.Exposures;

namespace Spoolbook.Shoot.Findings;

/// <summary>What to say about a slip of the pen: what is wrong with what was written, and what to write instead.</summary>
/// <param name="Text">What was written; empty where nothing was.</param>
/// <param name="Objection">What is wrong, after what was written: <c>has no unit</c>; where nothing was written, a sentence.</param>
/// <param name="Advice">What to write instead: <c>write 6ft or 1.8m</c>.</param>
public sealed record SlipSentences(string Text, Sentence Objection, Sentence Advice)
{
    /// <summary>All of it in one sentence: <c>'31' has no unit: write 31+12 or 31.3ft</c>.</summary>
    public Sentence Whole =>
        Text.Length == 0
            ? Sentence.Of("slip.whole.empty", ("objection", Objection), ("advice", Advice))
            : Sentence.Of("slip.whole", ("text", Text), ("objection", Objection), ("advice", Advice));

    /// <summary>The sentences about a slip.</summary>
    public static SlipSentences Of(Slip slip)
    {
        var (objection, advice) = slip.Fault switch
        {
            FilmLengthFault fault => OfLength(fault, slip.Gauge),
            SpeedFault fault => OfSpeed(fault),
            StopFault fault => OfStop(fault),
            StopsFault fault => OfStops(fault),
            DistanceFault fault => OfDistance(fault),
            MeasureFault fault => OfMeasure(fault, slip.Measure ?? MeasureKind.Number),
            ReciprocityFault fault => OfReciprocity(fault),
            _ => OfTimeLapse((TimeLapseFault)slip.Fault),
        };
        return new SlipSentences(slip.Text.Trim().Length == 0 ? "" : slip.Text, objection, advice);
    }

    static (Sentence Objection, Sentence Advice) OfLength(FilmLengthFault fault, Gauge? gauge) =>
        fault switch
        {
            FilmLengthFault.Empty => (Sentence.Of("slip.length.empty"), Sentence.Of("slip.length.forms")),
            FilmLengthFault.NoUnit => (Sentence.Of("slip.no-unit"), Sentence.Of("slip.length.forms")),
            FilmLengthFault.UnknownUnit => (Sentence.Of("slip.length.unknown-unit"), Sentence.Of("slip.length.forms")),
            FilmLengthFault.Negative => (Sentence.Of("slip.negative"), Sentence.Of("slip.length.counts-up")),
            FilmLengthFault.DecimalComma => (Sentence.Of("slip.comma"), Sentence.Of("slip.length.point")),
            FilmLengthFault.Clock => (Sentence.Of("slip.length.clock"), Sentence.Of("slip.length.in-seconds", ("example", "90s"))),
            FilmLengthFault.Minutes => (Sentence.Of("slip.length.minutes"), Sentence.Of("slip.length.in-seconds", ("example", "150s"))),
            FilmLengthFault.NoFrames => (Sentence.Of("slip.length.no-frames"), Sentence.Of("slip.length.whole-feet")),
            FilmLengthFault.NoFeet => (Sentence.Of("slip.length.no-feet"), Sentence.Of("slip.length.frames-alone")),
            FilmLengthFault.PartOfAFrame => (Sentence.Of("slip.length.part-of-frame"), Sentence.Of("slip.length.frames-are-whole")),
            FilmLengthFault.PartOfAFoot => (Sentence.Of("slip.length.part-of-foot"), Sentence.Of("slip.length.either-way")),
            FilmLengthFault.FramesMakeAFoot => (
                gauge is null
                    ? Sentence.Of("slip.length.a-foot-in-frames")
                    : Sentence.Of("slip.length.a-foot-in-frames.of-gauge", ("n", gauge.FramesPerFoot.ToString()), ("gauge", gauge.Name)),
                Sentence.Of("slip.carry")
            ),
            FilmLengthFault.TooLong => (Sentence.Of("slip.length.too-long"), Sentence.Of("slip.length.forms")),
            _ => (Sentence.Of("slip.length.none"), Sentence.Of("slip.length.forms")),
        };

    static (Sentence Objection, Sentence Advice) OfSpeed(SpeedFault fault) =>
        fault switch
        {
            SpeedFault.Empty => (Sentence.Of("slip.speed.empty"), Sentence.Of("slip.speed.forms")),
            SpeedFault.NotAboveZero => (Sentence.Of("slip.speed.not-above-zero"), Sentence.Of("slip.speed.film-runs")),
            SpeedFault.DecimalComma => (Sentence.Of("slip.comma"), Sentence.Of("slip.speed.point")),
            SpeedFault.OverZero => (Sentence.Of("slip.over-zero"), Sentence.Of("slip.speed.forms")),
            SpeedFault.TooFast => (Sentence.Of("slip.speed.too-fast"), Sentence.Of("slip.speed.forms")),
            _ => (Sentence.Of("slip.speed.none"), Sentence.Of("slip.speed.forms")),
        };

    static (Sentence Objection, Sentence Advice) OfStop(StopFault fault) =>
        fault switch
        {
            StopFault.Empty => (Sentence.Of("slip.stop.empty"), Sentence.Of("slip.stop.forms")),
            StopFault.NotAboveZero => (Sentence.Of("slip.stop.not-above-zero"), Sentence.Of("slip.stop.above-zero")),
            StopFault.DecimalComma => (Sentence.Of("slip.comma"), Sentence.Of("slip.stop.point")),
            StopFault.NotNeighbours => (Sentence.Of("slip.stop.not-neighbours"), Sentence.Of("slip.stop.wider-first")),
            StopFault.NotAPart => (Sentence.Of("slip.stop.no-part"), Sentence.Of("slip.stop.next-or-part")),
            StopFault.BeyondAnyLens => (Sentence.Of("slip.stop.beyond"), Sentence.Of("slip.stop.forms")),
            _ => (Sentence.Of("slip.stop.none"), Sentence.Of("slip.stop.forms")),
        };

    static (Sentence Objection, Sentence Advice) OfStops(StopsFault fault) =>
        fault switch
        {
            StopsFault.Empty => (Sentence.Of("slip.stops.empty"), Sentence.Of("slip.stops.forms")),
            StopsFault.DecimalComma => (Sentence.Of("slip.comma"), Sentence.Of("slip.stops.point")),
            StopsFault.OverZero => (Sentence.Of("slip.over-zero"), Sentence.Of("slip.stops.forms")),
            StopsFault.TooMany => (Sentence.Of("slip.stops.too-many"), Sentence.Of("slip.stops.forms")),
            _ => (Sentence.Of("slip.stops.none"), Sentence.Of("slip.stops.forms")),
        };

    static (Sentence Objection, Sentence Advice) OfDistance(DistanceFault fault) =>
        fault switch
        {
            DistanceFault.Empty => (Sentence.Of("slip.distance.empty"), Sentence.Of("slip.distance.forms")),
            DistanceFault.NoUnit => (Sentence.Of("slip.no-unit"), Sentence.Of("slip.distance.forms")),
            DistanceFault.Negative => (Sentence.Of("slip.negative"), Sentence.Of("slip.distance.forms")),
            DistanceFault.DecimalComma => (Sentence.Of("slip.comma"), Sentence.Of("slip.distance.point")),
            DistanceFault.TwoDistances => (Sentence.Of("slip.distance.two"), Sentence.Of("slip.distance.one")),
            DistanceFault.InchesMakeAFoot => (Sentence.Of("slip.distance.a-foot-in-inches"), Sentence.Of("slip.carry")),
            _ => (Sentence.Of("slip.distance.none"), Sentence.Of("slip.distance.forms")),
        };

    static (Sentence Objection, Sentence Advice) OfMeasure(MeasureFault fault, MeasureKind kind)
    {
        var (what, forms) = kind switch
        {
            MeasureKind.Time => (Sentence.Of("slip.measure.time"), Sentence.Of("slip.measure.time.forms")),
            MeasureKind.Lux => (Sentence.Of("slip.measure.lux"), Sentence.Of("slip.measure.lux.forms")),
            MeasureKind.Candelas => (Sentence.Of("slip.measure.candelas"), Sentence.Of("slip.measure.candelas.forms")),
            MeasureKind.Part => (Sentence.Of("slip.measure.part"), Sentence.Of("slip.measure.part.forms")),
            MeasureKind.Size => (Sentence.Of("slip.measure.size"), Sentence.Of("slip.measure.size.forms")),
            MeasureKind.Angle => (Sentence.Of("slip.measure.angle"), Sentence.Of("slip.measure.angle.forms")),
            MeasureKind.Density => (Sentence.Of("slip.measure.density"), Sentence.Of("slip.measure.density.forms")),
            _ => (Sentence.Of("slip.measure.number"), Sentence.Of("slip.measure.number.forms")),
        };
        return fault switch
        {
            MeasureFault.Empty => (Sentence.Of("slip.measure.empty", ("what", what)), forms),
            MeasureFault.NoUnit => (Sentence.Of("slip.no-unit"), forms),
            MeasureFault.UnknownUnit => (Sentence.Of("slip.measure.unknown-unit", ("what", what)), forms),
            MeasureFault.DecimalComma => (Sentence.Of("slip.comma"), Sentence.Of("slip.measure.point")),
            MeasureFault.Negative => (Sentence.Of("slip.negative"), forms),
            MeasureFault.NotAboveZero => (Sentence.Of("slip.measure.not-above-zero"), forms),
            MeasureFault.OverZero => (Sentence.Of("slip.over-zero"), forms),
            MeasureFault.TooMuch => (Sentence.Of("slip.measure.too-much"), forms),
            _ => (Sentence.Of("slip.measure.none", ("what", what)), forms),
        };
    }

    static (Sentence Objection, Sentence Advice) OfReciprocity(ReciprocityFault fault) =>
        fault switch
        {
            ReciprocityFault.TimeOfNothing => (Sentence.Of("slip.reciprocity.time-of-nothing"), Sentence.Of("slip.reciprocity.by-stops")),
            ReciprocityFault.ShorterTime => (Sentence.Of("slip.reciprocity.shorter-time"), Sentence.Of("slip.reciprocity.by-time")),
            ReciprocityFault.LessLight => (Sentence.Of("slip.reciprocity.less-light"), Sentence.Of("slip.reciprocity.by-stops")),
            _ => (Sentence.Of("slip.reciprocity.none"), Sentence.Of("slip.reciprocity.forms")),
        };

    static (Sentence Objection, Sentence Advice) OfTimeLapse(TimeLapseFault fault) =>
        fault switch
        {
            TimeLapseFault.NotAboveZero => (Sentence.Of("slip.time-lapse.not-above-zero"), Sentence.Of("slip.time-lapse.give-interval")),
            TimeLapseFault.FramesAgainstTime => (Sentence.Of("slip.time-lapse.frames-and-time"), Sentence.Of("slip.time-lapse.one-of-two")),
            TimeLapseFault.IntervalsAgainstEvent => (
                Sentence.Of("slip.time-lapse.intervals-and-event"),
                Sentence.Of("slip.time-lapse.one-of-them")
            ),
            TimeLapseFault.EventBeforeInterval => (
                Sentence.Of("slip.time-lapse.too-short"),
                Sentence.Of("slip.time-lapse.shorter-interval")
            ),
            _ => (Sentence.Of("slip.time-lapse.two-of-three"), Sentence.Of("slip.time-lapse.which-three")),
        };
}
