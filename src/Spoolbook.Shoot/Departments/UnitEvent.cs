using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Departments;

/// <summary>One thing that a production wrote about one unit of the school's stock.</summary>
/// <param name="Production">The production's path from the school's folder.</param>
/// <param name="Lot">The lot, by its name on the shelf.</param>
/// <param name="Unit">The unit, by the number on its can.</param>
/// <param name="Kind">What happened.</param>
/// <param name="At">When.</param>
/// <param name="Other">Where it came from or went to, as written; null for a load, or where it is not written.</param>
/// <param name="Place">Where that is written, from the school's folder.</param>
public sealed record UnitEvent(string Production, string Lot, int Unit, UnitEventKind Kind, DateTime At, string? Other, Place Place);
