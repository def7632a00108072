using Spoolbook.Shoot.Departments;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks;

/// <summary>A check on all productions of a school together. It reads the school's book and adds nothing up itself.</summary>
public sealed record DepartmentCheck(string Name, Level Level, Func<DepartmentBook, IEnumerable<Finding>> Look)
    : Check(Name, Level, Round.Department);
