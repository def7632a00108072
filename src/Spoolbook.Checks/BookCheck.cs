using Spoolbook.Checks.Running;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks;

/// <summary>A check on the books of the whole shoot. It reads the books and adds nothing up itself.</summary>
public sealed record BookCheck(string Name, Level Level, Func<Context, Books, IEnumerable<Finding>> Look)
    : Check(Name, Level, Round.Strips);
