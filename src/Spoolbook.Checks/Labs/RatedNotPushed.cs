using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class RatedNotPushed
{
    public static readonly RecordCheck Check = new("lab/rated-not-pushed", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        let lot = context.Production.LotOf(roll)
        let rated = roll.Rated
        where Orders.GoesToLab(roll) && rated is not null && lot is { Index.Value: > 0 }
        let up = Math.Log2((double)rated.Value / lot.Index.Value)
        where up - Orders.PushOf(roll) > context.Of(Tolerances.RatedUp)
        select Check.At(roll, rated.Place, $"Roll {roll.Name.Value} is rated {Context.Number(rated.Value)}, {Context.Stops(up)} faster than its stock, and is {Said(Orders.PushOf(roll))}") with
        {
            Others = [new(lot!.Index.Place, "what the stock is made for"), .. Ordered(roll)],
            Figures = [new("stock", Context.Number(lot.Index.Value)), new("rated", Context.Number(rated.Value)), new("pushed", Orders.PushOf(roll) == 0 ? "not" : Context.Stops(Orders.PushOf(roll)))],
            Help = $"Order the push: `push: {Context.Exposed(Math.Round(up))}`. If it was meant to be thin, accept it with that reason.",
        };

    static IEnumerable<Related> Ordered(Roll roll) => roll.Lab?.Push is { } push ? [new Related(push.Place, "the push")] : [];

    static string Said(double push) => push == 0 ? "not pushed" : $"pushed by {Context.Stops(push)}";
}
