namespace Spoolbook.Film;

/// <summary>A width and perforation of film: how many frames the trade counts to a foot.</summary>
/// <param name="Name">As the trade writes it: <c>16mm</c>, <c>35mm 3-perf</c>.</param>
/// <param name="FramesPerFoot">The trade's nominal count of frames in a foot; not always whole (64/3 in 35 mm 3-perf).</param>
public sealed record Gauge(string Name, Ratio FramesPerFoot)
{
    /// <summary>16 mm: 40 frames a foot (Metcalfe and Christensen 1938; Gale, 1930s, p. 15).</summary>
    public static Gauge Film16 { get; } = new("16mm", 40);
}
