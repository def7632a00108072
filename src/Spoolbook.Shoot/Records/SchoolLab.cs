using System.Collections.Immutable;

namespace Spoolbook.Shoot.Records;

/// <summary>A lab that the school works with.</summary>
/// <param name="Lab">The lab, as a production has it.</param>
/// <param name="Rates">What it charges; null where it is not written.</param>
/// <param name="TakesInOn">The days of the week on which it takes film in; empty where nothing is written.</param>
public sealed record SchoolLab(Lab Lab, Rates? Rates, ImmutableArray<Located<DayOfWeek>> TakesInOn);
