using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class RollLeftOut
{
    public static readonly RecordCheck Check = new("lab/roll-left-out", Level.Warning, Look, NeedsAll: true);

    static IEnumerable<Finding> Look(Context context)
    {
        var rolls = context.Production.Rolls.Where(r => !r.IsPractice && r.Takes.Any()).ToArray();
        var lastSent = rolls.Where(r => context.Production.SentOn(r) is not null).MaxBy(r => context.Production.SentOn(r)!.Value);
        return from roll in rolls
               let finding = SuppressedScope(roll) ?? StillOut(context, roll) ?? NotInTheBox(context, roll, lastSent)
               where finding is not null
               select finding;
    }

    // That it stays is written; why it does is what somebody will ask.
    static Finding? SuppressedScope(Roll roll)
    {
        var good = roll.Takes.FirstOrDefault(t => t.Mark.Value == Mark.Good);
        return good is null || roll.Lab?.Send is not { Value: false } send ? null
            : Check.At(roll, send.Place, $"Roll {roll.Name.Value} holds good takes and goes to no lab") with
            {
                Others = [new(good.Mark.Place, $"take {good.Slate} is good")],
                Help = "Write `send: yes`, or accept it with the reason why it waits, so that it is not forgotten: exposed film should be processed soon.",
            };
    }

    // Without `unload:` a roll is in the camera, and the order leaves it out.
    static Finding? StillOut(Context context, Roll roll)
    {
        if (roll.Unload is not null)
        {
            return null;
        }

        var back = context.Production.BodyNamed(context.WalkOf(roll).End.Body)?.Returned.Back;
        return back is not { Value: > 0 } ? null
            : Check.At(roll, roll.Name.Place, $"Roll {roll.Name.Value} is in no order to the lab: nothing says that it was taken out, and the camera went back") with
            {
                Others = [new(back.Place, "the camera went back")],
                Help = "Find the roll, and write down how it was taken out: `unload: {on: …, by: …, light: …, tail: …}`.",
            };
    }

    // What is planned for a later consignment is not forgotten.
    static Finding? NotInTheBox(Context context, Roll roll, Roll? lastSent)
    {
        var production = context.Production;
        if (lastSent is null || production.SentOn(lastSent) is not { } sent || roll.Unload is not { } unload || production.SentOn(roll) is not null || production.ConsignmentsOf(roll).Any() || roll.Lab?.Send?.Value == false)
        {
            return null;
        }

        var listed = production.Lab is { Consignments.IsEmpty: false };

        return DateOnly.FromDateTime(unload.On.Value) > sent.Value ? null
            : Check.At(roll, roll.Lab?.Place ?? roll.Name.Place, $"Roll {roll.Name.Value} was out of the camera when the box went to the lab on {Context.Day(sent.Value)}, and was not in it") with
            {
                Others = [new(sent.Place, $"roll {lastSent.Name.Value} went"), new(unload.On.Place, $"roll {roll.Name.Value} was taken out")],
                Help = $"Look in the bag and the fridge, and send it after. If it was in the box, write so: {(listed ? $"name it in that consignment's `rolls:`" : $"`sent: {Context.Day(sent.Value)}`")}; if it is not to be processed, `send: no`.",
            };
    }
}
