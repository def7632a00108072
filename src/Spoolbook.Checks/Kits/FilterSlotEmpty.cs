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
        select Check.At(
            roll,
            run.First,
            run.Fault.Place,
            Sentence.Of(run.IsOne ? "kit/filter-slot-empty.message.one" : "kit/filter-slot-empty.message.many", ("takes", run.Slates))
        ) with
        {
            Advice = Sentence.Of("kit/filter-slot-empty.help"),
        };

    // As last logged: at loading, or on an earlier take.
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
