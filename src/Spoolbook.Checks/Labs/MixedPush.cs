using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class MixedPush
{
    public static readonly RecordCheck Check = new("lab/mixed-push", Level.Warning, Look, NeedsAll: true);

    // One finding for each odd roll, however many set-ups and rolls it differs from: it is one decision.
    static IEnumerable<Finding> Look(Context context)
    {
        var rolls = context.Production.Rolls.Where(r => r.GoesToLab).ToArray();
        var fromUsual = FromUsual(context, rolls);
        return from pair in fromUsual.Select((roll, index) => (Odd: roll, Before: fromUsual[..index]))
               let other = pair.Before.FirstOrDefault(r => Differ(context, r, pair.Odd))
               where other is not null
               select Finding(other, pair.Odd);
    }

    // First the rolls ordered as most of their stock are, then by how far they are pushed or pulled. Of two that
    // differ, the later one in this order is the odd one, with the order to check.
    static Roll[] FromUsual(Context context, Roll[] rolls)
    {
        var usual = rolls
            .GroupBy(r => StockOf(context, r) ?? "", StringComparer.Ordinal)
            .ToDictionary(
                stock => stock.Key,
                stock => stock.GroupBy(Orders.PushOf).MinBy(g => (-g.Count(), Math.Abs(g.Key)))!.Key,
                StringComparer.Ordinal
            );
        return [.. rolls.OrderBy(r => (Orders.PushOf(r) == usual[StockOf(context, r) ?? ""] ? 0 : 1, Math.Abs(Orders.PushOf(r))))];
    }

    static string? StockOf(Context context, Roll roll) => context.Production.LotOf(roll)?.Stock.Value;

    // Two different stocks do not match anyway.
    static bool Differ(Context context, Roll a, Roll b) =>
        Orders.PushOf(a) != Orders.PushOf(b) && StockOf(context, a) == StockOf(context, b) && SetUps.Shared(a, b).Length > 0;

    static Finding Finding(Roll other, Roll odd)
    {
        var shots = string.Join(", ", SetUps.Shared(other, odd));
        var (here, there) = (Say(Orders.PushOf(odd)), Say(Orders.PushOf(other)));
        return Check.At(
            odd,
            odd.Lab?.Push?.Place ?? odd.Name.Place,
            Sentence.Of(
                "lab/mixed-push.message",
                ("odd", odd.Name.Value),
                ("here", here),
                ("other", other.Name.Value),
                ("there", there),
                ("shots", shots)
            )
        ) with
        {
            Others =
            [
                new(other.Lab?.Push?.Place ?? other.Name.Place, Sentence.Of("lab/mixed-push.other.roll", ("other", other.Name.Value))),
            ],
            Figures =
            [
                new(Sentence.Of("lab/mixed-push.figure.roll.other", ("other", other.Name.Value)), there),
                new(Sentence.Of("lab/mixed-push.figure.roll.odd", ("odd", odd.Name.Value)), here),
            ],
            Advice = Sentence.Of("lab/mixed-push.help"),
        };
    }

    static Sentence Say(double push) =>
        push switch
        {
            0 => Sentence.Of("lab/mixed-push.value.normal"),
            > 0 => Sentence.Of("lab/mixed-push.value.pushed", ("stops", Context.Stops(push))),
            _ => Sentence.Of("lab/mixed-push.value.pulled", ("stops", Context.Stops(-push))),
        };
}
