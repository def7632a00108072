using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Kits;

static class FilterSlotEmpty
{
    public static readonly RecordCheck Check = new("kit/filter-slot-empty", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        let slots = SlotsOf(roll)
        from run in Runs.Of(roll.Takes, take => slots[take] is { Value: false } said ? said : null)
        select Check.At(roll, run.First, run.Fault.Place, $"The filter slot behind the lens stood empty {(run.Takes.Length == 1 ? "at take" : "at takes")} {run.Slates}: light came in through it to the film") with
        {
            Help = "Put the holder in, with a filter or without, before the next take, and write `slot: filled` there. Have these takes looked at for a light streak first; in doubt, shoot them again.",
        };

    // As last said: at loading, or on a take before.
    static Dictionary<Take, Located<bool>?> SlotsOf(Roll roll)
    {
        var slots = new Dictionary<Take, Located<bool>?>(ReferenceEqualityComparer.Instance);
        var said = roll.Load.SlotFilled;
        foreach (var take in roll.Takes)
        {
            said = take.SlotFilled ?? said;
            slots[take] = said;
        }

        return slots;
    }
}
