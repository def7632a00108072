namespace Spoolbook.Film.Exposures;

/// <summary>One thing that changes an exposure.</summary>
/// <param name="Name">In the trade's words: <c>speed</c>, <c>finder</c>, <c>filter 85</c>.</param>
/// <param name="Stops">Positive where the film has light to spare, negative where it lacks it.</param>
/// <param name="Reckoning">How the stops came about, for a student to follow.</param>
public sealed record ExposureTerm(string Name, double Stops, string Reckoning);
