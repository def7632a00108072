using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class ProcessMismatch
{
    public static readonly RecordCheck Check = new("lab/process-mismatch", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        let lot = context.Production.LotOf(roll)
        let ordered = roll.Lab?.Process
        where
            roll.GoesToLab
            && ordered is not null
            && lot is not null
            && Orders.Plain(lot.Process.Value) != Orders.Plain(ordered.Value)
        select Check.At(
            roll,
            ordered.Place,
            Sentence.Of(
                "lab/process-mismatch.message",
                ("roll", roll.Name.Value),
                ("ordered", ordered.Value),
                ("process", lot.Process.Value)
            )
        ) with
        {
            Others = [new(lot.Process.Place, Sentence.Of("lab/process-mismatch.other.what-the-stock-is-made-for"))],
            Figures =
            [
                new(Sentence.Of("lab/process-mismatch.figure.stock"), lot.Stock.Value),
                new(Sentence.Of("lab/process-mismatch.figure.made-for"), lot.Process.Value),
                new(Sentence.Of("lab/process-mismatch.figure.ordered"), ordered.Value),
            ],
            Advice = Sentence.Of("lab/process-mismatch.help", ("process", lot.Process.Value), ("check", Check.Name)),
        };
}
