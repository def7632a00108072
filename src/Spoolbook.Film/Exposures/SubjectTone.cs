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

/// <summary>What a subject's tone changes.</summary>
public static class SubjectTones
{
    static readonly Dictionary<string, SubjectTone> _names = new(StringComparer.Ordinal)
    {
        ["average"] = SubjectTone.Average,
        ["pastel"] = SubjectTone.Pastel,
        ["dark"] = SubjectTone.Dark,
    };

    /// <summary>The names of the tones: <c>pastel</c>.</summary>
    public static IReadOnlyCollection<string> Names => _names.Keys;

    /// <summary>The tone of that name; null where no tone has it.</summary>
    public static SubjectTone? Named(string name) => _names.TryGetValue(name, out var tone) ? tone : null;

    /// <summary>Stops of light to spare (above 0) or wanting (below 0), against an average subject in the same light.</summary>
    public static double Stops(SubjectTone tone) => tone switch
    {
        SubjectTone.Pastel => 0.5,
        SubjectTone.Dark => -0.5,
        _ => 0,
    };
}
