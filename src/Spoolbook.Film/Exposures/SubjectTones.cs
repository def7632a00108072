namespace Spoolbook.Film.Exposures;

/// <summary>The stops for a subject's tone.</summary>
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

    /// <summary>The tone of that name; null for an unknown name.</summary>
    public static SubjectTone? Named(string name) => _names.TryGetValue(name, out var tone) ? tone : null;

    /// <summary>Stops of light to spare (above 0) or missing (below 0), against an average subject in the same light.</summary>
    public static double Stops(SubjectTone tone) =>
        tone switch
        {
            SubjectTone.Pastel => 0.5,
            SubjectTone.Dark => -0.5,
            _ => 0,
        };
}
