namespace Spoolbook.Shoot.Accounts;

/// <summary>The use of film of a part of the shoot: a scene, a lot, a body.</summary>
/// <param name="Name">Its name; null for film without one.</param>
public sealed record UseOfPart(string? Name, UseOfFilm Use);
