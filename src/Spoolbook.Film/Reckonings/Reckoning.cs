using System.Collections.Immutable;

namespace Spoolbook.Film.Reckonings;

/// <summary>One of the trade's sums, worked out: the answers, and the way to them for whoever wants to follow.</summary>
/// <param name="Title">What was asked, in a few words.</param>
/// <param name="Answers">The answers, the one asked for first.</param>
/// <param name="Steps">The reckoning, line by line.</param>
public sealed record Reckoning(string Title, ImmutableArray<ReckoningLine> Answers, ImmutableArray<ReckoningLine> Steps);
