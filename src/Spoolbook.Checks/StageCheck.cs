using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks;

/// <summary>A finding of another room. Listed here so that `explain`, rules and waivers treat it as a check's.</summary>
public sealed record StageCheck(string Name, Level Level, Round Round) : Check(Name, Level, Round);
