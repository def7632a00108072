using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Departments;

/// <summary>How often a check found something in a production.</summary>
/// <param name="Check">The check's name.</param>
/// <param name="Level">The level.</param>
/// <param name="Count">How often; above zero.</param>
public sealed record FoundByCheck(string Check, Level Level, int Count);
