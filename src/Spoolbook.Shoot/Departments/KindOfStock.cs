using Spoolbook.Film;

namespace Spoolbook.Shoot.Departments;

/// <summary>A production's film of one stock.</summary>
/// <param name="Stock">The stock, by its name on the can.</param>
/// <param name="Exposed">Film exposed or lost.</param>
/// <param name="Left">Film that can still be shot: sealed, short ends, and in the cameras.</param>
/// <param name="Lacking">What the shots left will need beyond that, at the average so far.</param>
public sealed record KindOfStock(string Stock, Footage Exposed, Footage Left, Footage Lacking);
