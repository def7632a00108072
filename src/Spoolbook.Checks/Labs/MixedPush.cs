using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class MixedPush
{
    public static readonly RecordCheck Check = new("lab/mixed-push", Level.Warning, Look, NeedsAll: true);

    // One finding for each two rolls, however many set-ups they share: it is one decision.
    static IEnumerable<Finding> Look(Context context)
    {
        var rolls = context.Production.Rolls.Where(Orders.GoesToLab).ToArray();
        return from later in rolls
               let earlier = rolls.TakeWhile(r => r != later).FirstOrDefault(r => Differ(context, r, later))
               where earlier is not null
               select Finding(earlier, later);
    }

    // Two stocks do not match anyway.
    static bool Differ(Context context, Roll a, Roll b) =>
        Orders.PushOf(a) != Orders.PushOf(b)
        && context.Production.LotOf(a)?.Stock.Value == context.Production.LotOf(b)?.Stock.Value
        && Shared(a, b).Length > 0;

    static Finding Finding(Roll earlier, Roll later)
    {
        var shots = string.Join(", ", Shared(earlier, later));
        var (here, there) = (Say(Orders.PushOf(later)), Say(Orders.PushOf(earlier)));
        return Check.At(later, later.Lab?.Push?.Place ?? later.Name.Place, $"Roll {later.Name.Value} is {here} and roll {earlier.Name.Value} is {there}, and both hold takes of {shots}: they will not match") with
        {
            Others = [new(earlier.Lab?.Push?.Place ?? earlier.Name.Place, $"roll {earlier.Name.Value}")],
            Figures = [new($"roll {earlier.Name.Value}", there), new($"roll {later.Name.Value}", here)],
            Help = "See whether the push is written on the right roll. If one set-up was really rated in two ways, tell whoever grades it.",
        };
    }

    // What is thrown away, or was a test, need not match anything.
    static string[] Shared(Roll a, Roll b) => [.. Wanted(a).Intersect(Wanted(b), StringComparer.Ordinal)];

    static IEnumerable<string> Wanted(Roll roll) =>
        from take in roll.Takes
        where take.Mark.Value is Mark.Good or Mark.Hold
        select take.Scene.Value + take.Shot?.Value;

    static string Say(double push) => push switch
    {
        0 => "processed as normal",
        > 0 => $"pushed by {Context.Stops(push)}",
        _ => $"pulled by {Context.Stops(-push)}",
    };
}
