namespace Spoolbook.Film.Exposures;

/// <summary>Exposure without a meter: f/16 at one over the index in bright sun, and the stop for every other kind of daylight.</summary>
public static class Daylight
{
    static readonly Dictionary<string, DaylightKind> _names = new(StringComparer.Ordinal)
    {
        ["snow-or-sand"] = DaylightKind.SnowOrSand,
        ["bright-sun"] = DaylightKind.BrightSun,
        ["weak-sun"] = DaylightKind.WeakSun,
        ["cloudy-bright"] = DaylightKind.CloudyBright,
        ["overcast-or-shade"] = DaylightKind.OvercastOrShade,
    };

    /// <summary>The names of the kinds, brightest first: <c>bright-sun</c>.</summary>
    public static IReadOnlyCollection<string> Names => _names.Keys;

    /// <summary>The kind of that name; null for an unknown name.</summary>
    public static DaylightKind? Named(string name) => _names.TryGetValue(name, out var kind) ? kind : null;

    /// <summary>The exposure value at index 100; 14.64 in bright sun.</summary>
    public static double Ev100(DaylightKind kind) => AvAtOneOverIndex(kind) + Math.Log2(100);

    /// <summary>The stop for a kind of daylight: Av at one over the index, then opened or closed for the time.</summary>
    /// <param name="kind">The light.</param>
    /// <param name="index">The exposure index, above 0.</param>
    /// <param name="time">The time to meter for.</param>
    /// <exception cref="ArgumentOutOfRangeException">The index is not above zero.</exception>
    public static Stop StopFor(DaylightKind kind, double index, ExposureTime time)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(index);
        return new Stop(AvAtOneOverIndex(kind) + Math.Log2(index) - MeterLaw.Tv(time));
    }

    static double AvAtOneOverIndex(DaylightKind kind) =>
        kind switch
        {
            DaylightKind.SnowOrSand => 9,
            DaylightKind.BrightSun => 8,
            DaylightKind.WeakSun => 7,
            DaylightKind.CloudyBright => 6,
            _ => 5,
        };
}
