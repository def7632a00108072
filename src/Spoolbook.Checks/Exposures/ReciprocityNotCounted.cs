using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Film.Exposures;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Exposures;

static class ReciprocityNotCounted
{
    public static readonly RecordCheck Check = new("exposure/reciprocity-not-counted", Level.Warning, Look);

    /// <param name="Beyond">Whether the time is beyond the table, so that it needs at least the table's last correction.</param>
    sealed record Fault(ExposureTime Time, double Needed, double Given, bool Beyond);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        let stock = context.Production.LotOf(roll)
        where !roll.IsPractice && stock?.Reciprocity is not null
        from run in Runs.Of(roll.Takes.Where(t => t.Mark.Value != Mark.Test), take => FaultOf(context, stock.Reciprocity!, take))
        let fault = run.Fault
        select Check.At(roll, run.First, (run.First.Reciprocity?.Place ?? run.First.Timed!.Place), Describe(run)) with
        {
            Others = [new(stock.Stock.Place, Sentence.Of("exposure/reciprocity-not-counted.other.the-stock-with-its-table"))],
            Figures =
            [
                new(Sentence.Of("exposure/reciprocity-not-counted.figure.held-open"), fault.Time.ToString()),
                new(
                    Sentence.Of(
                        fault.Beyond ? "exposure/reciprocity-not-counted.figure.last-line" : "exposure/reciprocity-not-counted.figure.table"
                    ),
                    Sentence.Of("exposure/reciprocity-not-counted.value.more", ("stops", Context.Stops(fault.Needed)))
                ),
                new(
                    Sentence.Of("exposure/reciprocity-not-counted.figure.given"),
                    fault.Given == 0 ? Sentence.Of("exposure/reciprocity-not-counted.value.nothing") : Context.Stops(fault.Given)
                ),
            ],
            Advice = Sentence.Of(
                "exposure/reciprocity-not-counted.help",
                ("needed", Context.Thirds(fault.Needed)),
                ("lacking", Context.Stops(fault.Needed - fault.Given))
            ),
        };

    static Fault? FaultOf(Context context, ReciprocityTable table, Take take)
    {
        if (take.Timed is not { Value.Sign: > 0 } timed)
        {
            return null;
        }

        var time = new ExposureTime(timed.Value);
        var seconds = timed.Value.ToDouble();
        var needed = table.LeastAt(seconds);
        var given = take.Reciprocity?.Value ?? 0;
        return needed - given > context.Of(Tolerances.ReciprocityShort) ? new Fault(time, needed, given, table.EndsBefore(seconds)) : null;
    }

    static Sentence Describe(Run<Fault> run)
    {
        var fault = run.Fault;
        var need = Context.Stops(fault.Needed);
        return Sentence.Of(
            (run.IsOne, fault.Given == 0) switch
            {
                (true, true) => "exposure/reciprocity-not-counted.message.one-nothing",
                (true, false) => "exposure/reciprocity-not-counted.message.one-less",
                (false, true) => "exposure/reciprocity-not-counted.message.many-nothing",
                (false, false) => "exposure/reciprocity-not-counted.message.many-less",
            },
            ("takes", run.Slates),
            ("time", fault.Time.ToString()),
            ("need", fault.Beyond ? Sentence.Of("exposure/reciprocity-not-counted.value.at-least", ("stops", need)) : need),
            ("given", Context.Stops(fault.Given))
        );
    }
}
