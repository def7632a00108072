namespace Spoolbook.Shoot.Strips;

/// <summary>One reading of the frame counter against the strip.</summary>
/// <param name="Move">The entry that it was read at the end of.</param>
/// <param name="Read">What it read, in frames.</param>
/// <param name="Expected">
/// What it should have read, from where it was zeroed or from the reading before. Null for a reading with nothing to
/// compare it with, which then gives the counter's zero.
/// </param>
/// <param name="Off">Frames that it read too much, the short way round a counter that wraps; zero where nothing was expected.</param>
public sealed record CounterReading(Move Move, long Read, long? Expected, long Off);
