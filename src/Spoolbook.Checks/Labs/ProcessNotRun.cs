using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class ProcessNotRun
{
    public static readonly RecordCheck Check = new("lab/process-not-run", Level.Error, Look);

    // Once for each process, at its first roll: one call to the lab is enough.
    static IEnumerable<Finding> Look(Context context) =>
        from lab in new[] { context.Production.Lab }
        where lab is { Processes.Length: > 0 }
        let runs = lab.Processes.Select(p => p.Value).ToArray()
        from process in from roll in context.Production.Rolls
                        where roll.GoesToLab
                        let needed = Orders.ProcessOf(context, roll)
                        where needed is not null && !runs.Contains(needed.Value, StringComparer.Ordinal)
                        group (roll, needed) by needed.Value
        let first = process.First()
        select Check.At(
            first.roll,
            (first.roll.Lab?.Process ?? first.roll.Lot ?? first.roll.Name).Place,
            Describe([.. process.Select(p => p.roll.Name.Value)], process.Key)
        ) with
        {
            Others = [new(lab.Processes[0].Place, Sentence.Of("lab/process-not-run.other.what-the-lab-runs"))],
            Figures = [new(Sentence.Of("lab/process-not-run.figure.the-lab-runs"), string.Join(", ", runs))],
            Advice = Likeness.Nearest(process.Key, runs) is { } near
                ? Sentence.Of("common.did-you-mean", ("near", near))
                : Sentence.Of("lab/process-not-run.help"),
        };

    static Sentence Describe(string[] rolls, string process) =>
        Sentence.Of(
            rolls.Length == 1 ? "lab/process-not-run.message.one" : "lab/process-not-run.message.many",
            ("rolls", string.Join(", ", rolls)),
            ("process", process)
        );
}
