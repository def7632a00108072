namespace Spoolbook.Shoot.Accounts;

/// <summary>The film of one key, counted.</summary>
/// <param name="Key">The slate, scene, day, …; null for film that has none.</param>
/// <param name="Tally">Its account.</param>
public sealed record Share(string? Key, Tally Tally);
