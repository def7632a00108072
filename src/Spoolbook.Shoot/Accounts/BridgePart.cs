using Spoolbook.Film;

namespace Spoolbook.Shoot.Accounts;

/// <summary>Some of the film of a bridge.</summary>
/// <param name="What">How it came, or where it is.</param>
/// <param name="Film">How much of it.</param>
/// <param name="Centimetres">The same in whole centimetres, as a metric paper prints it.</param>
public sealed record BridgePart<TWhat>(TWhat What, Footage Film, long Centimetres);
