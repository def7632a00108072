using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class CouldNotGo
{
    public static readonly RecordCheck Check = new("lab/could-not-go", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        let naming = Consigned.To(context.Production, roll).Select(c => c.Naming).FirstOrDefault()
        let finding = SuppressedScope(roll, naming) ?? InTheCamera(roll, naming, context.Production.SentOn(roll))
        where finding is not null
        select finding;

    static Finding? SuppressedScope(Roll roll, Located<string>? naming) =>
        naming is null || roll.Lab?.Send is not { Value: false } held ? null
        : Check.At(roll, naming.Place, $"Roll {roll.Name.Value} is named in a consignment, and held back from the lab") with
        {
            Others = [new(held.Place, "held back")],
            Help = "Take `send: no` out of the roll's sheet, or the roll out of the consignment.",
        };

    static Finding? InTheCamera(Roll roll, Located<string>? naming, Located<DateOnly>? sent)
    {
        if (sent is null || (roll.Unload is { } out_ && DateOnly.FromDateTime(out_.On.Value) <= sent.Value))
        {
            return null;
        }

        var taken = roll.Unload is { } unload ? $"was taken out of the camera on {Context.Day(DateOnly.FromDateTime(unload.On.Value))}" : "was never taken out of the camera";
        return Check.At(roll, (naming ?? roll.Name).Place, $"Roll {roll.Name.Value} went to the lab on {Context.Day(sent.Value)}, and {taken}") with
        {
            Others = [new(sent.Place, "the day on which it went"), .. roll.Unload is { } found ? [new Related(found.On.Place, "taken out")] : (Related[])[]],
            Help = roll.Unload is null ? "Write down how it was taken out: `unload: {on: …, by: …, light: …, tail: …}`." : "One of the two days is wrong; or it was another roll that went.",
        };
    }
}
