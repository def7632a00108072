using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class ProcessTwoWays
{
    public static readonly RecordCheck Check = new("lab/process-two-ways", Level.Warning, Look);

    // Once for each other way of writing it. What the lab calls it comes first.
    static IEnumerable<Finding> Look(Context context) =>
        from process in Written(context.Production).GroupBy(p => Orders.Plain(p.Value), StringComparer.Ordinal)
        let first = process.First()
        from other in process.Where(p => p.Value != first.Value).DistinctBy(p => p.Value, StringComparer.Ordinal)
        select Check.At(other.Place, Sentence.Of("lab/process-two-ways.message", ("other", other.Value), ("first", first.Value))) with
        {
            Others = [new Related(first.Place, Sentence.Of("lab/process-two-ways.other"))],
            Advice = Sentence.Of("lab/process-two-ways.help", ("first", first.Value)),
        };

    static IEnumerable<Located<string>> Written(Production production) =>
        (production.Lab?.Processes ?? [])
            .Concat(production.Lots.Select(l => l.Process))
            .Concat(production.Rolls.Select(r => r.Lab?.Process).OfType<Located<string>>())
            .Concat((production.Rates?.Processes ?? []).Select(p => p.Process));
}
