namespace Spoolbook.Film;

/// <summary>The table of gauges and the trade's names for each.</summary>
static class Gauges
{
    // Kodak's reference guide (p. 70) offers 1/500, 1/1000 and 1/2000 inch; which goes with which gauge is common
    // practice, from memory, except for 16 mm.
    const double ThousandthInch = 0.0254;
    const double TwoThousandthInch = 0.0127;
    const double FiveHundredthInch = 0.0508;

    // M. Hurbis-Cherrier, Voice and Vision (2007), app. 6.
    const double Usual16 = 0.015;

    // SMPTE 101-2003, 0.628 in.
    const decimal Width16 = 15.95m;

    // From memory, as are the widths in the rows below: 1.377 in.
    const decimal Width35 = 34.975m;

    // SMPTE 239-2004 gives the pitches; L. J. Wheeler, Principles of Cinematography (1953), p. 286, the picture.
    public static readonly Gauge Film8 = new(
        "8mm",
        80,
        7.975m,
        FilmPitch.InInches(1, 0.1500m, 0.1497m),
        new(4.80m, 3.51m),
        TwoThousandthInch
    );

    // SMPTE 149-2004, table 1, gives the pitches; the picture is from memory (SMPTE 157).
    public static readonly Gauge Super8 = new(
        "Super 8",
        72,
        7.975m,
        FilmPitch.InInches(1, 0.1667m, 0.1664m),
        new(5.69m, 4.22m),
        TwoThousandthInch
    )
    {
        ComesInCartridges = true,
    };

    // The step is from an encyclopaedia, and there was only one pitch; the picture is Wheeler's (1953), p. 286.
    public static readonly Gauge Film9 = new("9.5mm", 40, 9.5m, FilmPitch.InMillimetres(1, 7.540m, 7.540m), new(8.5m, 6.5m), Usual16);

    // SMPTE's standard for 35-mm film with 16-mm perforations, and Z22.5-1947 for the long pitch; the
    // picture is from memory (SMPTE 7).
    static readonly FilmPitch Pitch16 = FilmPitch.InInches(1, 0.3000m, 0.2994m);
    public static readonly Gauge Film16 = new("16mm", 40, Width16, Pitch16, new(10.26m, 7.49m), Usual16);

    // The picture is from memory (SMPTE 201M).
    public static readonly Gauge Super16 = new("Super 16", 40, Width16, Pitch16, new(12.52m, 7.41m), Usual16);

    // KS 0.1870 in for prints, BH 0.1866 in for the camera; 64 perforations a foot. Pictures from memory
    // (SMPTE 59, full width).
    public static readonly Gauge Film35 = new("35mm", 16, Width35, Pitch35(4), new(24.89m, 18.67m), ThousandthInch);
    public static readonly Gauge Film35Perf3 = new(
        "35mm 3-perf",
        new Ratio(64, 3),
        Width35,
        Pitch35(3),
        new(24.89m, 13.87m),
        ThousandthInch
    );
    public static readonly Gauge Film35Perf2 = new("35mm 2-perf", 32, Width35, Pitch35(2), new(24.89m, 9.35m), ThousandthInch);

    // SMPTE 119:2011 gives 0.1870 in; 64 frames in 5 ft. The short pitch and the picture are from memory.
    public static readonly Gauge Film65 = new("65mm", new Ratio(64, 5), 64.97m, Pitch35(5), new(52.63m, 23.01m), FiveHundredthInch);

    public static readonly IReadOnlyList<Gauge> All = [Film8, Super8, Film9, Film16, Super16, Film35Perf2, Film35Perf3, Film35, Film65];

    // Names as Key returns them: no case, no blanks, no hyphens, no final "mm".
    static readonly Dictionary<string, Gauge> _byName = Names(
        (Film8, ["8", "regular8", "standard8", "double8", "r8"]),
        (Super8, ["super8", "s8"]),
        (Film9, ["9.5"]),
        (Film16, ["16", "regular16", "standard16"]),
        (Super16, ["super16", "s16"]),
        (Film35Perf2, ["35mm2perf", "2perf"]),
        (Film35Perf3, ["35mm3perf", "3perf"]),
        (Film35, ["35", "35mm4perf", "4perf"]),
        (Film65, ["65", "70", "65/70", "65mm5perf", "70mm5perf", "5perf"])
    );

    public static Gauge? Named(string name) => _byName.GetValueOrDefault(Key(name));

    static string Key(string name)
    {
        var letters = name.Where(c => c is not (' ' or '-' or '_')).Select(char.ToLowerInvariant);
        var key = string.Concat(letters);
        return key.EndsWith("mm", StringComparison.Ordinal) ? key[..^2] : key;
    }

    static Dictionary<string, Gauge> Names(params (Gauge Gauge, string[] Names)[] table) =>
        table
            .SelectMany(row => row.Names.Select(name => (name, row.Gauge)))
            .ToDictionary(pair => pair.name, pair => pair.Gauge, StringComparer.Ordinal);

    static FilmPitch Pitch35(int perforations) => FilmPitch.InInches(perforations, 0.1870m, 0.1866m);
}
