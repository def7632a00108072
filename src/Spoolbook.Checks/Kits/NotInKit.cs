using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Kits;

static class NotInKit
{
    public static readonly RecordCheck Check = new("kit/not-in-kit", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        from used in Bodies(context, roll).Concat(roll.Takes.SelectMany(take => Used(context, take)))
        where used.Listed.Length > 0 && !used.Listed.Contains(used.Name.Value, StringComparer.Ordinal)
        select Check.At(roll, used.Name.Place, Sentence.Of(used.Description, ("name", used.Name.Value))) with
        {
            Take = used.Take,
            Figures = [new Figure(Sentence.Of("kit/not-in-kit.figure.in-the-kit"), string.Join(", ", used.Listed))],
            Advice = Likeness.Nearest(used.Name.Value, used.Listed) is { } near
                ? Sentence.Of("common.did-you-mean", ("near", near))
                : Sentence.Of("kit/not-in-kit.help"),
        };

    // Nothing of a kind listed: nobody keeps that list.
    static IEnumerable<Use> Bodies(Context context, Roll roll)
    {
        var names = context.Production.Bodies.Select(b => b.Name.Value).ToArray();
        return from body in new[] { roll.Body }.Concat(roll.Log.OfType<Reload>().Select(r => r.Body))
               where body is not null
               select new Use("kit/not-in-kit.message.body", body, names, null);
    }

    static IEnumerable<Use> Used(Context context, Take take)
    {
        var production = context.Production;
        foreach (var filter in take.Filters)
        {
            yield return new Use("kit/not-in-kit.message.filter", filter, [.. production.Filters.Select(f => f.Name.Value)], take.Slate);
        }

        if (take.Meter is { } meter)
        {
            yield return new Use("kit/not-in-kit.message.meter", meter, [.. production.Meters.Select(m => m.Name.Value)], take.Slate);
        }

        if (take.Motor is { } motor)
        {
            yield return new Use("kit/not-in-kit.message.motor", motor, [.. production.Motors.Select(m => m.Name.Value)], take.Slate);
        }
    }

    sealed record Use(string Description, Located<string> Name, string[] Listed, string? Take);
}
