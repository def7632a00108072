namespace Spoolbook.Film;

/// <summary>
/// A width and perforation of film: the count of frames in a foot that the trade works with, and beside it the true
/// pitch, from which the true count follows. Anything in feet says which count it uses; <see cref="FramesPerFoot"/> is
/// always the nominal one.
/// </summary>
public sealed record Gauge
{
    internal Gauge(string name, Ratio framesPerFoot, decimal width, FilmPitch pitch, CameraAperture aperture, double circleOfConfusion)
    {
        Name = name;
        FramesPerFoot = framesPerFoot;
        Width = Ratio.FromDecimal(width);
        Pitch = pitch;
        Aperture = aperture;
        CircleOfConfusion = circleOfConfusion;
    }

    /// <summary>As the trade writes it: <c>16mm</c>, <c>35mm 3-perf</c>.</summary>
    public string Name { get; }

    /// <summary>The trade's nominal count of frames in a foot; not always whole (64/3 in 35 mm 3-perf).</summary>
    public Ratio FramesPerFoot { get; }

    /// <summary>
    /// The width of the film in millimetres, exact: 15.95 in 16 mm (SMPTE 101-2003; Z22.5-1947 has 15.98 ± 0.03).
    /// The other gauges' are from memory.
    /// </summary>
    public Ratio Width { get; }

    /// <summary>The true distance between perforations, and how many make a frame.</summary>
    public FilmPitch Pitch { get; }

    /// <summary>The part of the film that the camera's gate exposes, in millimetres.</summary>
    public CameraAperture Aperture { get; }

    /// <summary>
    /// The usual circle of confusion in millimetres. Sources disagree by a factor of two, so every depth of field takes
    /// it as an input; this is only the default.
    /// </summary>
    public double CircleOfConfusion { get; }

    /// <summary>
    /// Whether its film comes in closed cartridges, of which light reaches only the frames in their gate: Super 8 (common practice).
    /// False where it is wound on spools or cores.
    /// </summary>
    public bool ComesInCartridges { get; internal init; }

    /// <summary>The nominal count of frames in a metre: frames in a foot over 0.3048.</summary>
    public Ratio FramesPerMetre => FramesPerFoot / Length.MetresPerFoot;

    /// <summary>8 mm: 80 frames a foot (C. Gale, Making Better Movies, 1930s, p. 15).</summary>
    public static Gauge Film8 => Gauges.Film8;

    /// <summary>Super 8: 72 frames a foot, 3600 in 50 ft (SMPTE 200M-2003).</summary>
    public static Gauge Super8 => Gauges.Super8;

    /// <summary>9.5 mm: 40 frames a foot by the trade's count; 40.42 by its step of 7.54 mm.</summary>
    public static Gauge Film9 => Gauges.Film9;

    /// <summary>16 mm: 40 frames a foot (Metcalfe and Christensen 1938; Gale, 1930s, p. 15).</summary>
    public static Gauge Film16 => Gauges.Film16;

    /// <summary>Super 16: the film of 16 mm with one row of perforations, and a wider picture.</summary>
    public static Gauge Super16 => Gauges.Super16;

    /// <summary>35 mm, 4 perforations a frame: 16 frames a foot (J. H. Battison, Movies for TV, 1950, p. 5).</summary>
    public static Gauge Film35 => Gauges.Film35;

    /// <summary>35 mm, 3 perforations a frame: 64/3 frames a foot.</summary>
    public static Gauge Film35Perf3 => Gauges.Film35Perf3;

    /// <summary>35 mm, 2 perforations a frame: 32 frames a foot.</summary>
    public static Gauge Film35Perf2 => Gauges.Film35Perf2;

    /// <summary>65 mm in the camera and 70 mm in print, 5 perforations a frame: 64 frames in 5 ft.</summary>
    public static Gauge Film65 => Gauges.Film65;

    /// <summary>The gauge where none is named: 16 mm.</summary>
    public static Gauge Default => Film16;

    /// <summary>Every gauge, narrow to wide.</summary>
    public static IReadOnlyList<Gauge> All => Gauges.All;

    /// <summary>
    /// The gauge of that name, or null. Ignores case, blanks, hyphens and a final <c>mm</c>, and knows the trade's
    /// other names: <c>regular 8</c>, <c>S16</c>, <c>35mm 4-perf</c>, <c>70mm</c>.
    /// </summary>
    public static Gauge? Named(string name) => Gauges.Named(name);

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
