namespace Spoolbook.Film.Scans;

/// <summary>Film shot at one speed in a file that plays at another: sound must change as the picture does.</summary>
/// <param name="Camera">The speed that the camera ran at.</param>
/// <param name="File">The speed that the file plays at.</param>
public readonly record struct RateChange(Speed Camera, Speed File)
{
    /// <summary>How much faster to play sound to stay with the picture: 25/24 from 24 to 25, 1000/1001 from 24 to 23.976.</summary>
    public Ratio Ratio => RunningTime.ApparentSpeed(Camera, File);

    /// <summary>The same in per cent: 4.16667 from 24 to 25; below zero to play it slower (Digital Fact Book).</summary>
    public Ratio Percent => (Ratio - 1) * 100;

    /// <summary>Whether nothing has to change.</summary>
    public bool IsNone => Ratio == Ratio.One;

    /// <summary>
    /// Frames of picture that unchanged sound is off after a length of film: from 24 to 23.976, 4 frames in 100 ft of 16 mm
    /// (Digital Fact Book).
    /// </summary>
    public Ratio Drift(Footage film) => (Ratio >= 1 ? Ratio - 1 : 1 - Ratio) * film.Frames;
}
