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
               let finding = HeldBack(roll) ?? StillOut(context, roll) ?? NotInTheBox(context, roll, lastSent)
               where finding is not null
               select finding;
    }

    // The sheet says that it stays here. Ask why.
    static Finding? HeldBack(Roll roll)
    {
        var good = roll.Takes.FirstOrDefault(t => t.Mark.Value == Mark.Good);
        return good is null || roll.Lab?.Send is not { Value: false } send
            ? null
            : Check.At(roll, send.Place, Sentence.Of("lab/roll-left-out.message.held-back", ("roll", roll.Name.Value))) with
            {
                Others = [new(good.Mark.Place, Sentence.Of("lab/roll-left-out.other.take-is-good", ("good", good.Slate)))],
                Advice = Sentence.Of("lab/roll-left-out.help.held-back"),
            };
    }

    // Without `unload:` a roll is in the camera, and the lab order leaves it out.
    static Finding? StillOut(Context context, Roll roll)
    {
        if (roll.Unload is not null)
        {
            return null;
        }

        var back = context.Production.BodyNamed(context.WalkOf(roll).End.Body)?.Returned.Back;
        return back is not { Value: > 0 }
            ? null
            : Check.At(roll, roll.Name.Place, Sentence.Of("lab/roll-left-out.message.still-out", ("roll", roll.Name.Value))) with
            {
                Others = [new(back.Place, Sentence.Of("lab/roll-left-out.other.the-camera-went-back"))],
                Advice = Sentence.Of("lab/roll-left-out.help.still-out"),
            };
    }

    // A roll planned for a later consignment is not forgotten.
    static Finding? NotInTheBox(Context context, Roll roll, Roll? lastSent)
    {
        var production = context.Production;
        if (
            lastSent is null
            || production.SentOn(lastSent) is not { } sent
            || roll.Unload is not { } unload
            || production.SentOn(roll) is not null
            || production.ConsignmentsOf(roll).Any()
            || roll.Lab?.Send?.Value == false
        )
        {
            return null;
        }

        var listed = production.Lab is { Consignments.IsEmpty: false };

        return DateOnly.FromDateTime(unload.On.Value) > sent.Value
            ? null
            : Check.At(
                roll,
                roll.Lab?.Place ?? roll.Name.Place,
                Sentence.Of("lab/roll-left-out.message.not-in-box", ("roll", roll.Name.Value), ("sent", Context.Day(sent.Value)))
            ) with
            {
                Others =
                [
                    new(sent.Place, Sentence.Of("lab/roll-left-out.other.roll-went", ("last-sent", lastSent.Name.Value))),
                    new(unload.On.Place, Sentence.Of("lab/roll-left-out.other.roll-was-taken-out", ("roll", roll.Name.Value))),
                ],
                Advice = Sentence.Of(
                    listed ? "lab/roll-left-out.help.not-in-list" : "lab/roll-left-out.help.not-in-box",
                    ("sent", Context.Day(sent.Value))
                ),
            };
    }
}
