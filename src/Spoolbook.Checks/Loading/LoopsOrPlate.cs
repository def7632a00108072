using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Loading;

static class LoopsOrPlate
{
    public static readonly RecordCheck Check = new("load/loops-or-plate", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        from seen in new (Located<bool>? Said, string What)[]
        {
            (roll.Load.LoopsSet, "load/loops-or-plate.message.loops"),
            (roll.Load.PlateClosed, "load/loops-or-plate.message.plate"),
        }
        where seen.Said?.Value == false
        select Check.At(roll, seen.Said!.Place, Sentence.Of(seen.What, ("roll", roll.Name.Value))) with
        {
            Advice = Sentence.Of("load/loops-or-plate.help"),
        };
}
