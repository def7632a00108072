namespace Spoolbook.Shoots;

/// <summary>
/// How often students slip, from memory of how a second-year shoot goes: a part of all takes, or of all rolls. No study is behind the
/// figures; they make a term in which every fourth roll or so has something to find.
/// </summary>
public sealed record MistakeRates
{
    /// <summary>Nobody slips.</summary>
    public static MistakeRates None { get; } = new();

    /// <summary>A usual term.</summary>
    public static MistakeRates Usual { get; } =
        new()
        {
            TakeNumberSkipped = 0.005,
            TakeLongerThanSpring = 0.01,
            LensNotInKit = 0.002,
            ShotNotListed = 0.004,
            LoadedInBrightLight = 0.02,
            NoLoader = 0.03,
            YearSlipped = 0.005,
        };

    /// <summary>Of takes: a number is left out.</summary>
    public double TakeNumberSkipped { get; init; }

    /// <summary>Of takes: the spring runs down before the take ends.</summary>
    public double TakeLongerThanSpring { get; init; }

    /// <summary>Of takes: the lens is not on the kit list.</summary>
    public double LensNotInKit { get; init; }

    /// <summary>Of takes: the shot is not on the list.</summary>
    public double ShotNotListed { get; init; }

    /// <summary>Of rolls: loaded in the sun.</summary>
    public double LoadedInBrightLight { get; init; }

    /// <summary>Of rolls: nobody wrote who loaded it.</summary>
    public double NoLoader { get; init; }

    /// <summary>Of rolls: the year of loading is the last one.</summary>
    public double YearSlipped { get; init; }
}
