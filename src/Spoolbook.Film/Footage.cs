using System.Globalization;

namespace Spoolbook.Film;

/// <summary>
/// A length of film, or a position on it, as a whole number of frames. Feet, metres and time are ways to
/// write it, and need a <see cref="Gauge"/> or a <see cref="Speed"/>. <c>default</c> is no film at all.
/// </summary>
/// <param name="Frames">Whole frames; negative only as the difference of two positions.</param>
public readonly record struct Footage(long Frames) : IComparable<Footage>
{
    /// <summary>No film; the head of the roll.</summary>
    public static Footage Zero => default;

    /// <summary>The sum of two lengths.</summary>
    /// <exception cref="OverflowException">More frames than 64 bits count.</exception>
    public static Footage operator +(Footage a, Footage b) => new(a.Frames + b.Frames);

    /// <summary>The difference of two lengths or positions.</summary>
    public static Footage operator -(Footage a, Footage b) => new(a.Frames - b.Frames);

    /// <summary>Whether <paramref name="a"/> is shorter, or nearer the head.</summary>
    public static bool operator <(Footage a, Footage b) => a.Frames < b.Frames;

    /// <summary>Whether <paramref name="a"/> is longer, or nearer the tail.</summary>
    public static bool operator >(Footage a, Footage b) => a.Frames > b.Frames;

    /// <summary>Whether <paramref name="a"/> is at most as long.</summary>
    public static bool operator <=(Footage a, Footage b) => a.Frames <= b.Frames;

    /// <summary>Whether <paramref name="a"/> is at least as long.</summary>
    public static bool operator >=(Footage a, Footage b) => a.Frames >= b.Frames;

    /// <inheritdoc/>
    public int CompareTo(Footage other) => Frames.CompareTo(other.Frames);

    /// <summary>The shorter of two.</summary>
    public static Footage Min(Footage a, Footage b) => a < b ? a : b;

    /// <summary>The longer of two.</summary>
    public static Footage Max(Footage a, Footage b) => a > b ? a : b;

    /// <summary>The exact length in feet by the gauge's nominal count.</summary>
    public Ratio Feet(Gauge gauge) => new Ratio(Frames, 1) / gauge.FramesPerFoot;

    /// <summary>The exact length in metres by the gauge's nominal count: feet times 0.3048.</summary>
    public Ratio Metres(Gauge gauge) => Feet(gauge) * Length.MetresPerFoot;

    /// <summary>The exact length in millimetres by the true pitch of a stock, as a ruler measures it.</summary>
    public Ratio TrueMillimetres(Gauge gauge, PitchKind stock) => Frames * gauge.Pitch.FrameStep(stock);

    /// <summary>The exact time in seconds that the film runs at a speed.</summary>
    public Ratio Seconds(Speed speed) => new Ratio(Frames, 1) / speed.FramesPerSecond;

    /// <summary>The frames that run in a time at a speed: the nearest, and the higher of two equally near.</summary>
    /// <exception cref="OverflowException">More frames than 64 bits count.</exception>
    public static Footage RunningFor(Ratio seconds, Speed speed) => new((long)(seconds * speed.FramesPerSecond).Round());

    /// <summary>
    /// The length as feet and frames, <c>31+12</c>: whole feet by the gauge's nominal count, and the whole frames over.
    /// In a gauge whose foot is not a whole number of frames the frames over are rounded down. A frame is a frame in
    /// every gauge, so passing another gauge converts: 83+38 in 16 mm are 3358 frames, and 209+14 in 35 mm (M. Lustig,
    /// Music Editing for Motion Pictures, 1980).
    /// </summary>
    public string FeetAndFrames(Gauge gauge)
    {
        var sign = Frames < 0 ? "-" : "";
        var magnitude = new Ratio(Math.Abs(Frames), 1);
        var feet = (magnitude / gauge.FramesPerFoot).Floor();
        var over = (magnitude - (new Ratio(feet, 1) * gauge.FramesPerFoot)).Floor();
        return string.Create(CultureInfo.InvariantCulture, $"{sign}{feet}+{TwoDigits((long)over)}");
    }

    // Two digits of frames, so that 31+05 cannot pass for 31+50.
    internal static string TwoDigits(long frames) => frames.ToString("00", CultureInfo.InvariantCulture);

    /// <summary>The frames, for debugging: <c>1252fr</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Frames}fr");
}
