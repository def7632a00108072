namespace Spoolbook.Film.Exposures;

/// <summary>How light the subject is, where incident light was metered.</summary>
public enum SubjectTone
{
    /// <summary>Average: no change.</summary>
    Average,

    /// <summary>Pastels and light colours: close down half a stop or more (Eastman Kodak TI2082, 1993, §7).</summary>
    Pastel,

    /// <summary>Dark colours: open up half a stop (Eastman Kodak TI2082, 1993, §7).</summary>
    Dark,
}
