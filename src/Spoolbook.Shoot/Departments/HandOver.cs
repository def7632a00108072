namespace Spoolbook.Shoot.Departments;

/// <summary>A unit that changes hands in a way that the two sides do not agree on.</summary>
/// <param name="Unit">The event that has no other side, or that another production's contradicts.</param>
/// <param name="Other">What it contradicts; null where the other side wrote nothing.</param>
/// <param name="Party">The production that wrote nothing, or has it already.</param>
/// <param name="IsOneSided">Whether the unit was handed over, and one side did not write it down; else two productions have it.</param>
public sealed record HandOver(UnitEvent Unit, UnitEvent? Other, string Party, bool IsOneSided);
