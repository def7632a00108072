using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Loading;

static class NoLoader
{
    public static readonly RecordCheck Check = new("load/no-loader", Level.Note, Look);

    // Alone, or with no crew list, there is no question who it was.
    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice && roll.Load.By is null && context.Production.People.Length > 1
        select Check.At(roll, roll.Load.Place, $"Nobody is named as the loader of roll {roll.Name.Value}") with
        {
            Help = "Write who threaded it, `by: …`, with the id that the crew list has: whoever finds a scratch or a fogged edge asks the loader first.",
        };
}
