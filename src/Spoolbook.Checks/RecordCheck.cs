using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks;

/// <summary>A check on the records.</summary>
/// <param name="NeedsAll">Whether it compares all the rolls, so that an unreadable roll would mislead it.</param>
public sealed record RecordCheck(string Name, Level Level, Func<Context, IEnumerable<Finding>> Look, bool NeedsAll = false)
    : Check(Name, Level, Round.Records);
