using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks;

/// <summary>A check on a waiver.</summary>
public sealed record WaiverCheck(string Name, Level Level) : Check(Name, Level, Round.Waivers);
