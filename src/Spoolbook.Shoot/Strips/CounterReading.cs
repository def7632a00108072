namespace Spoolbook.Shoot.Strips;

/// <summary>One reading of the frame counter against the strip.</summary>
/// <param name="Move">The entry at whose end it was read.</param>
/// <param name="Read">What it told, in frames.</param>
/// <param name="Expected">
/// What it should have told, by where it was set to zero or by the reading before; null for a reading that
/// nothing can be held against, which then tells where the counter's zero lies.
/// </param>
/// <param name="Off">Frames that it told too much, the short way round a counter that wraps; zero where nothing was expected.</param>
public sealed record CounterReading(Move Move, long Read, long? Expected, long Off);
