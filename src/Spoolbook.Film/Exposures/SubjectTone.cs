namespace Spoolbook.Film.Exposures;

/// <summary>How light the subject is, where the light that falls on it was measured.</summary>
public enum SubjectTone
{
    /// <summary>Average: nothing is changed.</summary>
    Average,

    /// <summary>Pastels and light colours: half a stop less, or more than half (Eastman Kodak TI2082, 1993, §7).</summary>
    Pastel,

    /// <summary>Dark colours: half a stop more (Eastman Kodak TI2082, 1993, §7).</summary>
    Dark,
}
