using System.Collections.Immutable;

namespace Spoolbook.Shoot.Strips;

/// <summary>How a footage dial ran away from the film over a roll.</summary>
/// <param name="Readings">Its readings, in the order of the log.</param>
/// <param name="Drift">
/// Feet that it told too much for each 100 ft of film (below zero: too little). Since a dial and a strip both
/// start at zero, the straight line through zero with the least squares of the errors.
/// </param>
/// <param name="Residual">The farthest that a reading lies from that line, in frames; below zero if below it. A dial read in whole feet is
/// good to about half a foot.</param>
public sealed record CounterDrift(ImmutableArray<DialReading> Readings, double Drift, double Residual);
