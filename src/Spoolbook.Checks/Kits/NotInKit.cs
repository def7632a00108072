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
        select Check.At(roll, used.Name.Place, $"The {used.What} `{used.Name.Value}` is not in the kit") with
        {
            Take = used.Take,
            Figures = [new Figure("in the kit", string.Join(", ", used.Listed))],
            Help = Likeness.Nearest(used.Name.Value, used.Listed) is { } near
                ? $"Did you mean `{near}`?"
                : "Correct the name, or list it in the kit, since it has to go back too.",
        };

    // A kind of which nothing is listed is a list that nobody keeps.
    static IEnumerable<Use> Bodies(Context context, Roll roll)
    {
        var names = context.Production.Bodies.Select(b => b.Name.Value).ToArray();
        return from body in new[] { roll.Body }.Concat(roll.Log.OfType<Reload>().Select(r => r.Body))
               where body is not null
               select new Use("body", body, names, null);
    }

    static IEnumerable<Use> Used(Context context, Take take)
    {
        var production = context.Production;
        foreach (var filter in take.Filters)
        {
            yield return new Use("filter", filter, [.. production.Filters.Select(f => f.Name.Value)], take.Slate);
        }

        if (take.Meter is { } meter)
        {
            yield return new Use("meter", meter, [.. production.Meters.Select(m => m.Name.Value)], take.Slate);
        }

        if (take.Motor is { } motor)
        {
            yield return new Use("motor", motor, [.. production.Motors.Select(m => m.Name.Value)], take.Slate);
        }
    }

    sealed record Use(string What, Located<string> Name, string[] Listed, string? Take);
}
