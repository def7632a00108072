using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

/// <summary>Set-ups that are on more than one roll, and will be cut together.</summary>
static class SetUps
{
    /// <summary>The shots with a wanted take on both rolls. Rejected takes and tests need not match.</summary>
    public static string[] Shared(Roll a, Roll b) => [.. Wanted(a).Intersect(Wanted(b), StringComparer.Ordinal)];

    static IEnumerable<string> Wanted(Roll roll) =>
        from take in roll.Takes
        where take.Mark.Value is Mark.Good or Mark.Hold
        select take.ShotName;
}
