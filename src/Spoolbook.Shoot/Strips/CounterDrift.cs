using System.Collections.Immutable;

namespace Spoolbook.Shoot.Strips;

/// <summary>How far a footage dial drifted from the film over a roll.</summary>
/// <param name="Readings">Its readings, in the order of the log.</param>
/// <param name="Drift">
/// Feet that it read too much for each 100 ft of film (below zero: too little). Dial and strip both start at zero, so
/// this is the least-squares line through zero.
/// </param>
/// <param name="Residual">
/// The largest distance of a reading from that line, in frames; below zero if below it. A dial read in whole feet is
/// good to about half a foot.
/// </param>
public sealed record CounterDrift(ImmutableArray<DialReading> Readings, double Drift, double Residual);
