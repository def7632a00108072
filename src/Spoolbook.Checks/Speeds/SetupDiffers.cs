using System.Collections.Immutable;
using Spoolbook.Checks.Counters;
using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Speeds;

static class SetupDiffers
{
    public static readonly RecordCheck Check = new("speed/setup-differs", Level.Warning, Look, NeedsAll: true);

    /// <param name="Other">A take of the same set-up at another speed.</param>
    /// <param name="Kept">The take that the speed was set on and kept from; null where it is written on the take itself.</param>
    sealed record Fault(string Shot, Take Other, Take? Kept);

    static IEnumerable<Finding> Look(Context context)
    {
        var running = context
            .Production.Rolls.Where(r => !r.IsPractice)
            .SelectMany(r => r.Takes)
            .Where(Runs)
            .ToLookup(t => t.ShotName, StringComparer.Ordinal);
        var slips = Slates
            .Of(context.Production)
            .Where(s => s.IsDoubtful)
            .Select(s => s.Take)
            .ToHashSet<Take>(ReferenceEqualityComparer.Instance);
        return from roll in context.Production.Rolls
               where !roll.IsPractice
               from run in Running.Runs.Of(roll.Takes.Where(t => Runs(t) && !slips.Contains(t)), take =>
                   FaultOf(context, roll, take, [.. running[take.ShotName]])
               )
               select Find(roll, run);
    }

    // Single frames and hand cranking have no speed to keep.
    static bool Runs(Take take) =>
        take is { Mark.Value: not Mark.Test, SingleFrames: null, Interval: null, Timed: null, HandCranked: null or { Value: false } };

    // A speed written on the take is a choice, unless it is nearly that of the others. A speed that is not the normal
    // one and was kept from another shot was forgotten.
    static Fault? FaultOf(Context context, Roll roll, Take take, ImmutableArray<Take> setUp)
    {
        if (take.SpeedWritten is not null)
        {
            var first = setUp[0];
            return first.Speed != take.Speed && AreAlike(context, first.Speed, take.Speed) ? new Fault(take.ShotName, first, null) : null;
        }

        var kept = roll.Takes.TakeWhile(t => !ReferenceEquals(t, take)).LastOrDefault(t => t.SpeedWritten is not null);
        return
            kept is not null
            && kept.ShotName != take.ShotName
            && take.Speed != context.Production.ProjectedAt
            && setUp.FirstOrDefault(t => t.Speed != take.Speed) is { } other
            && !AreAlike(context, other.Speed, take.Speed)
            ? new Fault(take.ShotName, other, kept)
            : null;
    }

    static bool AreAlike(Context context, Speed a, Speed b)
    {
        var part = a.FramesPerSecond / b.FramesPerSecond;
        return (part < 1 ? 1 - part : part - 1) <= context.Of(Tolerances.SpeedsAlike);
    }

    static Finding Find(Roll roll, Run<Fault> run) => run.Fault.Kept is { } kept ? Forgotten(roll, run, kept) : Alike(roll, run);

    static Finding Forgotten(Roll roll, Run<Fault> run, Take kept)
    {
        var (take, other) = (run.First, run.Fault.Other);
        return Check.At(
            roll,
            take,
            take.Number.Place,
            Sentence.Of(
                run.IsOne ? "speed/setup-differs.message.kept.one" : "speed/setup-differs.message.kept.many",
                ("takes", run.Slates),
                ("speed", take.Speed.ToString()),
                ("kept", kept.Slate),
                ("other", other.Slate),
                ("other-speed", other.Speed.ToString())
            )
        ) with
        {
            Others =
            [
                new(kept.SpeedWritten!.Place, Sentence.Of("speed/setup-differs.other.the-speed-was-set-here")),
                new(other.Number.Place, Sentence.Of("speed/setup-differs.other.take", ("other", other.Slate))),
            ],
            Figures = Figures(take, other),
            Advice = Sentence.Of("speed/setup-differs.help.kept", ("speed", other.Speed.ToString()), ("take-speed", take.Speed.ToString())),
        };
    }

    static Finding Alike(Roll roll, Run<Fault> run)
    {
        var (take, other) = (run.First, run.Fault.Other);
        return Check.At(
            roll,
            take,
            take.SpeedWritten!.Place,
            Sentence.Of(
                run.IsOne ? "speed/setup-differs.message.alike.one" : "speed/setup-differs.message.alike.many",
                ("takes", run.Slates),
                ("speed", take.Speed.ToString()),
                ("other", other.Slate),
                ("other-speed", other.Speed.ToString())
            )
        ) with
        {
            Others =
            [
                new(
                    (other.SpeedWritten?.Place ?? other.Number.Place),
                    Sentence.Of("speed/setup-differs.other.take", ("other", other.Slate))
                ),
            ],
            Figures = Figures(take, other),
            Advice = Sentence.Of("speed/setup-differs.help.alike"),
        };
    }

    static ImmutableArray<Figure> Figures(Take take, Take other) =>
        [new(Sentence.Plain(take.Slate), Context.Speed(take.Speed)), new(Sentence.Plain(other.Slate), Context.Speed(other.Speed))];
}
