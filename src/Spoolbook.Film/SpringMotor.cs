namespace Spoolbook.Film;

/// <summary>
/// A camera's spring. A full wind drives a length of film, not a time: the spring turns the mechanism the same number
/// of times at any speed (common practice gives 20 to 30 seconds at 24, which is 12 to 18 ft of 16 mm).
/// </summary>
/// <param name="FullWind">The film that a full wind drives.</param>
public readonly record struct SpringMotor(Footage FullWind)
{
    /// <summary>A spring known by the seconds that it runs at a speed.</summary>
    public static SpringMotor Running(Ratio seconds, Speed at) => new(Footage.RunningFor(seconds, at));

    /// <summary>Seconds that a full wind runs at a speed: double the speed, half the time.</summary>
    public Ratio SecondsAt(Speed speed) => FullWind.Seconds(speed);
}
