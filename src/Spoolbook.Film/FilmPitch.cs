namespace Spoolbook.Film;

/// <summary>
/// The distance from perforation to perforation, and how many of them make a frame. Standards give it for film at rest
/// in air of 23 ± 1 °C and 50 ± 2 % relative humidity (ISO 69:1998, 16 mm; SMPTE 149-2004, Super 8; SMPTE 109-2003 for
/// the rows of perforations of 16 mm). Film shrinks from there, which is not computed here.
/// </summary>
/// <param name="PerforationsPerFrame">1 to 5.</param>
/// <param name="LongPitch">The long pitch in millimetres, exact.</param>
/// <param name="ShortPitch">The short pitch in millimetres, exact.</param>
public sealed record FilmPitch(int PerforationsPerFrame, Ratio LongPitch, Ratio ShortPitch)
{
    /// <summary>The pitch in millimetres.</summary>
    public Ratio Of(PitchKind stock) => stock == PitchKind.LongPitch ? LongPitch : ShortPitch;

    /// <summary>From one frame to the next, in millimetres: perforations a frame times the pitch.</summary>
    public Ratio FrameStep(PitchKind stock) => PerforationsPerFrame * Of(stock);

    internal static FilmPitch InMillimetres(int perforations, decimal longPitch, decimal shortPitch) =>
        new(perforations, Ratio.FromDecimal(longPitch), Ratio.FromDecimal(shortPitch));

    // The standards of the narrow gauges are in inches; their millimetres are rounded from these.
    internal static FilmPitch InInches(int perforations, decimal longPitch, decimal shortPitch) =>
        InMillimetres(perforations, longPitch * 25.4m, shortPitch * 25.4m);
}
