using System.Collections.Immutable;
using Spoolbook.Papers.Facts;

namespace Spoolbook.Papers.Terms;

/// <summary>The facts of the school's own page.</summary>
/// <param name="Count">How many productions there are, in words.</param>
/// <param name="Tables">Its tables, which production needs help first.</param>
/// <param name="Findings">What is wrong with loans, shelf and the school's file, a line each.</param>
public sealed record TermFacts(PaperHead Head, string Count, ImmutableArray<TermTable> Tables, ImmutableArray<string> Findings)
    : PaperFacts(Head);
