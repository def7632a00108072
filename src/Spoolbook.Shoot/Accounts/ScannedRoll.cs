using Spoolbook.Film;

namespace Spoolbook.Shoot.Accounts;

/// <summary>What the lab scans of one roll.</summary>
/// <param name="Film">The film scanned, each frame once.</param>
public sealed record ScannedRoll(RollBook Roll, Footage Film);
