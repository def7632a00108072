namespace Spoolbook.Papers.ExposureCards;

/// <summary>The body at one speed.</summary>
/// <param name="Run">Film that runs in a minute, in the production's unit.</param>
/// <param name="Normal">Whether it is the speed that the others are compared with.</param>
public sealed record CardSpeed(
    string Speed,
    string Marked,
    string Adapted,
    string Stops,
    string Run,
    string Wind,
    string Looks,
    bool Normal
);
