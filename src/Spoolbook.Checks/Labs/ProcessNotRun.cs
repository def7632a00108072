using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Labs;

static class ProcessNotRun
{
    public static readonly RecordCheck Check = new("lab/process-not-run", Level.Error, Look);

    // Once for each process, at its first roll: the lab is asked once.
    static IEnumerable<Finding> Look(Context context) =>
        from lab in new[] { context.Production.Lab }
        where lab is { Processes.Length: > 0 }
        let runs = lab.Processes.Select(p => p.Value).ToArray()
        from process in from roll in context.Production.Rolls
                        where Orders.GoesToLab(roll)
                        let needed = Orders.ProcessOf(context, roll)
                        where needed is not null && !runs.Contains(needed.Value, StringComparer.Ordinal)
                        group (roll, needed) by needed.Value
        let first = process.First()
        select Check.At(first.roll, (first.roll.Lab?.Process ?? first.roll.Lot ?? first.roll.Name).Place, $"{Rolls(process.Select(p => p.roll.Name.Value))} through {process.Key}, and the lab does not run it") with
        {
            Others = [new(lab.Processes[0].Place, "what the lab runs")],
            Figures = [new("the lab runs", string.Join(", ", runs))],
            Help = Likeness.Nearest(process.Key, runs) is { } near
                ? $"Did you mean `{near}`?"
                : "Ask the lab, and add the process to `processes:`; or do not send the roll there: `send: no`.",
        };

    static string Rolls(IEnumerable<string> names)
    {
        var all = names.ToArray();
        return all.Length == 1 ? $"Roll {all[0]} goes" : $"Rolls {string.Join(", ", all)} go";
    }
}
