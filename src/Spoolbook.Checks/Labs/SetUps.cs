using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

/// <summary>Set-ups that stand on more than one roll, and will be cut against one another.</summary>
static class SetUps
{
    /// <summary>The shots of which both rolls hold a wanted take. What is thrown away, or was a test, need not match anything.</summary>
    public static string[] Shared(Roll a, Roll b) => [.. Wanted(a).Intersect(Wanted(b), StringComparer.Ordinal)];

    static IEnumerable<string> Wanted(Roll roll) =>
        from take in roll.Takes
        where take.Mark.Value is Mark.Good or Mark.Hold
        select take.ShotName;
}
