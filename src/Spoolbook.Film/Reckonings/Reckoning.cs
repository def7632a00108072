using System.Collections.Immutable;

namespace Spoolbook.Film.Reckonings;

/// <summary>One of the trade's sums, worked out: the answers, and the steps for a student who wants to follow.</summary>
/// <param name="Title">What was asked, in a few words.</param>
/// <param name="Answers">The answers, the one asked for first.</param>
/// <param name="Steps">The working, line by line.</param>
public sealed record Reckoning(string Title, ImmutableArray<ReckoningLine> Answers, ImmutableArray<ReckoningLine> Steps);
