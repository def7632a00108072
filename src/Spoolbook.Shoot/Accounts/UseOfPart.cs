namespace Spoolbook.Shoot.Accounts;

/// <summary>The use of film of a part of the shoot: a scene, a lot, a body.</summary>
/// <param name="Name">Its name; null for film that belongs to none.</param>
public sealed record UseOfPart(string? Name, UseOfFilm Use);
