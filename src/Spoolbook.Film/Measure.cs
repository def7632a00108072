namespace Spoolbook.Film;

/// <summary>
/// Reads the figures that are neither film, nor speed, nor stop: times, light, and parts of a whole. Each is exact, and
/// each kind has its own.
/// </summary>
public static class Measure
{
    static readonly MeasureForm _seconds = new(
        MeasureKind.Time,
        new()
        {
            ["s"] = 1,
            ["min"] = 60,
            ["h"] = 3600,
        }
    );

    // 1 / 0.3048², in whole numbers.
    static readonly Ratio _luxInFootcandle = 1 / (Length.MetresPerFoot * Length.MetresPerFoot);

    static readonly MeasureForm _lux = new(
        MeasureKind.Lux,
        new()
        {
            ["fc"] = _luxInFootcandle,
            ["lx"] = 1,
            ["lux"] = 1,
        },
        aboveZero: true
    );

    static readonly MeasureForm _candelas = new(MeasureKind.Candelas, new() { ["cd/m2"] = 1, ["cd/m²"] = 1 }, aboveZero: true);

    static readonly MeasureForm _part = new(MeasureKind.Part, new() { ["%"] = new Ratio(1, 100), [""] = 1 }, most: 1);

    static readonly MeasureForm _millimetres = new(
        MeasureKind.Size,
        new()
        {
            ["mm"] = 1,
            ["cm"] = 10,
            ["in"] = new Ratio(254, 10),
        },
        aboveZero: true
    );

    static readonly MeasureForm _degrees = new(
        MeasureKind.Angle,
        new()
        {
            [""] = 1,
            ["deg"] = 1,
            ["°"] = 1,
        },
        most: 360,
        aboveZero: true
    );

    static readonly MeasureForm _number = new(MeasureKind.Number, new() { [""] = 1 }, aboveZero: true);

    static readonly MeasureForm _density = new(MeasureKind.Density, new() { [""] = 1 }, most: 10);

    /// <summary>A time in seconds: <c>12s</c>, <c>90min</c>, <c>3h</c>.</summary>
    public static Parsed<Ratio, MeasureFault> Seconds(string text) => _seconds.Read(text);

    /// <summary>Light on the subject in lux: <c>80fc</c>, <c>860lx</c>.</summary>
    public static Parsed<Ratio, MeasureFault> Lux(string text) => _lux.Read(text);

    /// <summary>Light from the subject in candelas a square metre: <c>3200cd/m2</c>.</summary>
    public static Parsed<Ratio, MeasureFault> Candelas(string text) => _candelas.Read(text);

    /// <summary>A part of a whole, from 0 to 1: <c>20%</c>, <c>0.2</c>, <c>1/5</c>.</summary>
    public static Parsed<Ratio, MeasureFault> Part(string text) => _part.Read(text);

    /// <summary>A size in millimetres, above 0: <c>25mm</c>, <c>6.1cm</c>, <c>2in</c>.</summary>
    public static Parsed<Ratio, MeasureFault> Millimetres(string text) => _millimetres.Read(text);

    /// <summary>A shutter's angle in degrees, above 0 and at most 360: <c>133</c>, <c>172.8deg</c>.</summary>
    public static Parsed<Ratio, MeasureFault> Degrees(string text) => _degrees.Read(text);

    /// <summary>A number above 0 without a unit, such as an index or a factor: <c>400</c>, <c>12.5</c>, <c>5/2</c>.</summary>
    public static Parsed<Ratio, MeasureFault> Number(string text) => _number.Read(text);

    /// <summary>A filter's density, from 0 to 10: <c>0.6</c>.</summary>
    public static Parsed<Ratio, MeasureFault> Density(string text) => _density.Read(text);
}
