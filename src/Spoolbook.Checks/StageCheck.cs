using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks;

/// <summary>
/// Something that another room says. It is listed here so that it is explained, set and accepted as a check's findings are.
/// </summary>
public sealed record StageCheck(string Name, Level Level, Round Round) : Check(Name, Level, Round);
