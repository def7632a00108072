namespace Spoolbook.Shoot.Records;

/// <summary>A lab that the school works with.</summary>
/// <param name="Lab">The lab, as a production has it.</param>
/// <param name="Rates">What it charges; null where it is not written.</param>
public sealed record SchoolLab(Lab Lab, Rates? Rates);
