using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Coverage;

/// <summary>What was shot, by shot list name.</summary>
static class Shots
{
    /// <summary>Every take of the rolls that count.</summary>
    public static IEnumerable<(Roll Roll, Take Take)> All(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        from take in roll.Takes
        select (roll, take);

    /// <summary>The wanted takes, by scene and shot together: <c>7B</c>.</summary>
    public static IEnumerable<IGrouping<string, (Roll Roll, Take Take)>> Wanted(Context context) =>
        from shot in All(context)
        where shot.Take.Mark.Value is Mark.Good or Mark.Hold
        group shot by shot.Take.ShotName;
}
