using System.Collections.Immutable;

namespace Spoolbook.Papers.Terms;

/// <summary>A table of the term: a section of its page, and a sheet of its workbook.</summary>
/// <param name="Id">Its anchor on the page.</param>
/// <param name="Title">Its heading.</param>
/// <param name="Empty">What is said where it has no rows.</param>
public sealed record TermTable(string Id, string Title, string Empty, ImmutableArray<TermColumn> Columns, ImmutableArray<TermRow> Rows);
