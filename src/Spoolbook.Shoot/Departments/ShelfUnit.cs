using System.Collections.Immutable;

namespace Spoolbook.Shoot.Departments;

/// <summary>A unit of the school's stock, and where it has been.</summary>
/// <param name="Lot">The lot, by its name.</param>
/// <param name="Number">The number on its can.</param>
/// <param name="Holder">The production that has it, or shot it; null while it is on the shelf.</param>
/// <param name="Events">What the productions wrote about it, in order of time.</param>
public sealed record ShelfUnit(string Lot, int Number, string? Holder, ImmutableArray<UnitEvent> Events);
