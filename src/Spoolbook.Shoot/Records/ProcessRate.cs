namespace Spoolbook.Shoot.Records;

/// <summary>The price of one process.</summary>
/// <param name="Length">Price of a foot or a metre.</param>
/// <param name="Minimum">The least that the lab charges, for each <see cref="Rates.MinimumPer"/>.</param>
public sealed record ProcessRate(Place Place, Located<string> Process, LengthRate Length, Located<decimal>? Minimum);
