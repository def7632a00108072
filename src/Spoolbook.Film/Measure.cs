namespace Spoolbook.Film;

/// <summary>
/// Reads the figures that the trade's sums ask for and that are neither film, nor speed, nor stop: how long
/// something takes, light, and parts of a whole. Each is exact, and each fault says what to write instead.
/// </summary>
public static class Measure
{
    static readonly MeasureForm _seconds = new(
        "a time", "write 12s, 90min or 3h", new() { ["s"] = 1, ["min"] = 60, ["h"] = 3600 });

    // 1 / 0.3048², in whole numbers.
    static readonly Ratio _luxInFootcandle = 1 / (Length.MetresPerFoot * Length.MetresPerFoot);

    static readonly MeasureForm _lux = new(
        "light on the subject", "write 80fc (footcandles) or 860lx", new() { ["fc"] = _luxInFootcandle, ["lx"] = 1, ["lux"] = 1 });

    static readonly MeasureForm _candelas = new(
        "light from the subject", "write 3200cd/m2", new() { ["cd/m2"] = 1, ["cd/m²"] = 1 });

    static readonly MeasureForm _part = new(
        "a part of a whole", "write 20%, 0.2 or 1/5", new() { ["%"] = new Ratio(1, 100), [""] = 1 }, most: 1);

    /// <summary>A time in seconds: <c>12s</c>, <c>90min</c>, <c>3h</c>.</summary>
    public static Parsed<Ratio, MeasureFault> Seconds(string text) => _seconds.Read(text);

    /// <summary>Light on the subject in lux: <c>80fc</c>, <c>860lx</c>.</summary>
    public static Parsed<Ratio, MeasureFault> Lux(string text) => _lux.Read(text);

    /// <summary>Light from the subject in candelas a square metre: <c>3200cd/m2</c>.</summary>
    public static Parsed<Ratio, MeasureFault> Candelas(string text) => _candelas.Read(text);

    /// <summary>A part of a whole, from 0 to 1: <c>20%</c>, <c>0.2</c>, <c>1/5</c>.</summary>
    public static Parsed<Ratio, MeasureFault> Part(string text) => _part.Read(text);
}
