using System.Collections.Immutable;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Running;

/// <summary>Takes that follow one another on a roll with the same mistake: it was made once, and is told once.</summary>
/// <param name="Takes">The takes, in order; one at least.</param>
/// <param name="Fault">What is wrong with all of them.</param>
sealed record Run<T>(ImmutableArray<Take> Takes, T Fault)
{
    /// <summary>The take at which it began, and the finding stands.</summary>
    public Take First => Takes[0];

    /// <summary>Whether it is a take alone.</summary>
    public bool IsOne => Takes.Length == 1;

    /// <summary>The slates within a sentence: <c>1A/2</c>, <c>1A/2 to 1B/1</c>.</summary>
    public Sentence Slates => Takes.Length switch
    {
        1 => First.Slate,
        2 => Context.And(Takes.Select(t => t.Slate)),
        _ => Context.FromTo(First.Slate, Takes[^1].Slate),
    };
}

/// <summary>Finds the runs.</summary>
static class Runs
{
    /// <summary>The runs of takes with one and the same fault; a take without a fault, or with another, ends a run.</summary>
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
