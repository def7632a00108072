namespace Spoolbook.Papers.ExposureCards;

/// <summary>What the body does at one speed.</summary>
/// <param name="Run">Film that runs in a minute, in feet or metres as the production counts.</param>
/// <param name="Normal">Whether it is the speed that everything else is told against.</param>
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
