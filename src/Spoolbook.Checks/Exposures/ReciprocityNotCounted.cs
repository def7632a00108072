using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Film.Exposures;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Exposures;

static class ReciprocityNotCounted
{
    public static readonly RecordCheck Check = new("exposure/reciprocity-not-counted", Level.Warning, Look);

    /// <param name="Beyond">Whether the time lies beyond the table, so that the need is that of its last line at least.</param>
    sealed record Fault(ExposureTime Time, double Needed, double Given, bool Beyond);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        let stock = context.Production.LotOf(roll)
        where !roll.IsPractice && stock?.Reciprocity is not null
        from run in Runs.Of(roll.Takes.Where(t => t.Mark.Value != Mark.Test), take => FaultOf(context, stock.Reciprocity!, take))
        let fault = run.Fault
        select Check.At(roll, run.First, (run.First.Reciprocity?.Place ?? run.First.Timed!.Place), $"{run.Were} held open for {fault.Time} a frame, at which the stock needs {Need(fault)} more, and {Said(fault)}") with
        {
            Others = [new(stock.Stock.Place, "the stock, with its table")],
            Figures =
            [
                new("held open", fault.Time.ToString()),
                new(fault.Beyond ? "the table's last line" : "by the stock's table", $"{Context.Stops(fault.Needed)} more"),
                new("given", fault.Given == 0 ? "nothing" : Context.Stops(fault.Given)),
            ],
            Help = $"If the lens was opened or the time made longer for it, write so on the take: `reciprocity: {Context.Thirds(fault.Needed)}`. If not, the take is {Context.Stops(fault.Needed - fault.Given)} under: shoot it again with the lens opened by that, since a longer time fails still more.",
        };

    static Fault? FaultOf(Context context, ReciprocityTable table, Take take)
    {
        if (take.Timed is not { Value.Sign: > 0 } timed)
        {
            return null;
        }

        var time = new ExposureTime(timed.Value);
        var seconds = timed.Value.ToDouble();
        var last = table.Points[^1];
        var needed = table.CorrectionAt(seconds) ?? (seconds > last.Seconds ? last.Stops : 0);
        var given = take.Reciprocity?.Value ?? 0;
        return needed - given > context.Of(Tolerances.ReciprocityShort) ? new Fault(time, needed, given, seconds > last.Seconds) : null;
    }

    static string Need(Fault fault) => (fault.Beyond ? "at least " : "") + Context.Stops(fault.Needed);

    static string Said(Fault fault) => fault.Given == 0 ? "nothing says that it was given" : $"{Context.Stops(fault.Given)} was given";
}
