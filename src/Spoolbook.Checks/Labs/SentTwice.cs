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
        let finding = named.Length > 1 ? Twice(roll, named)
        : named.Length == 1 ? OnTwoDays(roll, named[0])
        : null
        where finding is not null
        select finding;

    static Finding Twice(Roll roll, (Consignment In, Located<string> Naming)[] named)
    {
        var boxes = named.Select(n => n.In).Distinct().ToArray();
        return Check.At(roll, named[^1].Naming.Place, Describe(roll, boxes)) with
        {
            Others = [.. named[..^1].Select(n => new Related(n.Naming.Place, Sentence.Of("lab/sent-twice.other.named-here-too")))],
            Advice = Sentence.Of("lab/sent-twice.help.twice"),
        };
    }

    static Sentence Describe(Roll roll, Consignment[] boxes)
    {
        if (boxes.Length == 1)
        {
            return Sentence.Of("lab/sent-twice.message.one-box", ("roll", roll.Name.Value));
        }

        SentenceValue number = boxes.Length == 2 ? Sentence.Of("lab/sent-twice.value.two") : boxes.Length;
        return boxes[0].SentOn is { } day
            ? Sentence.Of(
                "lab/sent-twice.message.boxes-of-day",
                ("roll", roll.Name.Value),
                ("boxes", number),
                ("day", Context.Day(day.Value))
            )
            : Sentence.Of("lab/sent-twice.message.boxes", ("roll", roll.Name.Value), ("boxes", number));
    }

    static Finding? OnTwoDays(Roll roll, (Consignment In, Located<string> Naming) named) =>
        roll.Lab?.SentOn is not { } own || named.In.SentOn is not { } day || own.Value == day.Value
            ? null
            : Check.At(
                roll,
                own.Place,
                Sentence.Of(
                    "lab/sent-twice.message.two-days",
                    ("roll", roll.Name.Value),
                    ("own", Context.Day(own.Value)),
                    ("day", Context.Day(day.Value))
                )
            ) with
            {
                Others = [new(named.Naming.Place, Sentence.Of("lab/sent-twice.other.named-here"))],
                Advice = Sentence.Of("lab/sent-twice.help.two-days"),
            };
}
