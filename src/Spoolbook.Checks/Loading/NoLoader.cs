using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Loading;

static class NoLoader
{
    public static readonly RecordCheck Check = new("load/no-loader", Level.Note, Look);

    // With one person in the crew, or no crew list, there is nobody to ask for.
    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice && roll.Load.By is null && context.Production.People.Length > 1
        select Check.At(roll, roll.Load.Place, Sentence.Of("load/no-loader.message", ("roll", roll.Name.Value))) with
        {
            Advice = Sentence.Of("load/no-loader.help"),
        };
}
