namespace Spoolbook.Film.Exposures;

/// <summary>One thing that changes an exposure.</summary>
/// <param name="Name">In the trade's words: <c>speed</c>, <c>finder</c>, <c>filter 85</c>.</param>
/// <param name="Stops">Positive: light to spare. Negative: light missing.</param>
/// <param name="Reckoning">How the stops are worked out, for a student to follow.</param>
public sealed record ExposureTerm(string Name, double Stops, string Reckoning);
