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
        from seen in new (Located<bool>? Said, string What)[] { (roll.Load.LoopsSet, "the loops were not set"), (roll.Load.PlateClosed, "the pressure plate was open") }
        where seen.Said?.Value == false
        select Check.At(roll, seen.Said!.Place, $"Roll {roll.Name.Value} was closed up although {seen.What}") with
        {
            Help = "If the roll is still in the camera, open it in the dark and set it right. What was shot so may jump or be soft: tell the lab, and shoot it again while the set stands.",
        };
}
