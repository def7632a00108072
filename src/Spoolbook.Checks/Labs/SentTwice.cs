using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class SentTwice
{
    public static readonly RecordCheck Check = new("lab/sent-twice", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        let named = Consigned.To(context.Production, roll).ToArray()
        let finding = named.Length > 1 ? Twice(roll, named) : named.Length == 1 ? OnTwoDays(roll, named[0]) : null
        where finding is not null
        select finding;

    static Finding Twice(Roll roll, (Consignment In, Located<string> Naming)[] named)
    {
        var boxes = named.Select(n => n.In).Distinct().ToArray();
        var first = boxes[0].SentOn is { } day ? $"of {Context.Day(day.Value)}" : "that stands first";
        var said = boxes.Length == 1 ? "is named twice in one consignment" : $"is named in {(boxes.Length == 2 ? "two" : Context.Number(boxes.Length))} consignments, and billed with the one {first}";
        return Check.At(roll, named[^1].Naming.Place, $"Roll {roll.Name.Value} {said}") with
        {
            Others = [.. named[..^1].Select(n => new Related(n.Naming.Place, "named here too"))],
            Help = "A can is in one box. Leave the roll in the list of the one that it went with; if it came back and was sent again, accept it with that reason.",
        };
    }

    static Finding? OnTwoDays(Roll roll, (Consignment In, Located<string> Naming) named) =>
        roll.Lab?.SentOn is not { } own || named.In.SentOn is not { } day || own.Value == day.Value ? null
        : Check.At(roll, own.Place, $"Roll {roll.Name.Value} went to the lab on {Context.Day(own.Value)} by its own sheet, and on {Context.Day(day.Value)} by the list of consignments") with
        {
            Others = [new(named.Naming.Place, "named here")],
            Help = "Take `sent:` out of the roll's sheet: the list of consignments says it once for all that went.",
        };
}
