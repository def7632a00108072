using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Running;

/// <summary>Finds the runs.</summary>
static class Runs
{
    /// <summary>The runs of takes with the same fault. A take without a fault, or with another, ends a run.</summary>
    public static IEnumerable<Run<T>> Of<T>(IEnumerable<Take> takes, Func<Take, T?> faultOf)
        where T : class
    {
        Run<T>? run = null;
        foreach (var take in takes)
        {
            var fault = faultOf(take);
            if (run is not null && Equals(run.Fault, fault))
            {
                run = run with { Takes = run.Takes.Add(take) };
                continue;
            }

            if (run is not null)
            {
                yield return run;
            }

            run = fault is null ? null : new Run<T>([take], fault);
        }

        if (run is not null)
        {
            yield return run;
        }
    }
}
