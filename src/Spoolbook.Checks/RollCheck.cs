using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks;

/// <summary>A check on one roll's strip or account.</summary>
public sealed record RollCheck(string Name, Level Level, Round Round, Func<Context, RollBook, IEnumerable<Finding>> Look)
    : Check(Name, Level, Round);
