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
        where roll.GoesToLab && rated is not null && lot is { Index.Value: > 0 }
        let up = Math.Log2((double)rated.Value / lot.Index.Value)
        where up - Orders.PushOf(roll) > context.Of(Tolerances.RatedUp)
        select Check.At(
            roll,
            rated.Place,
            Sentence.Of(
                "lab/rated-not-pushed.message",
                ("roll", roll.Name.Value),
                ("rated", Context.Number(rated.Value)),
                ("up", Context.Stops(up)),
                ("order", Said(Orders.PushOf(roll)))
            )
        ) with
        {
            Others = [new(lot!.Index.Place, Sentence.Of("lab/rated-not-pushed.other.what-the-stock-is-made-for")), .. Ordered(roll)],
            Figures =
            [
                new(Sentence.Of("lab/rated-not-pushed.figure.stock"), Context.Number(lot.Index.Value)),
                new(Sentence.Of("lab/rated-not-pushed.figure.rated"), Context.Number(rated.Value)),
                new(
                    Sentence.Of("lab/rated-not-pushed.figure.pushed"),
                    Orders.PushOf(roll) == 0 ? Sentence.Of("lab/rated-not-pushed.value.not") : Context.Stops(Orders.PushOf(roll))
                ),
            ],
            Advice = Sentence.Of("lab/rated-not-pushed.help", ("up", Context.Exposed(Math.Round(up)))),
        };

    static IEnumerable<Related> Ordered(Roll roll) =>
        roll.Lab?.Push is { } push ? [new Related(push.Place, Sentence.Of("lab/rated-not-pushed.other.the-push"))] : [];

    static Sentence Said(double push) =>
        push == 0
            ? Sentence.Of("lab/rated-not-pushed.value.not-pushed")
            : Sentence.Of("lab/rated-not-pushed.value.pushed", ("push", Context.Stops(push)));
}
