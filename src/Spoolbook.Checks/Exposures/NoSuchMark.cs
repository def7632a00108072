using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Exposures;

static class NoSuchMark
{
    public static readonly RecordCheck Check = new("exposure/no-such-mark", Level.Error, Look);

    // A production without bodies keeps no kit list, and nobody can say what its shutters have.
    static IEnumerable<Finding> Look(Context context) =>
        context.Production.Bodies.IsEmpty
            ? []
            : from roll in context.Production.Rolls
              from run in Runs.Of(roll.Takes, Unknown(context, roll))
              select Find(roll, run);

    // A body that is not in the kit is flagged by itself.
    static Func<Take, UnknownMark?> Unknown(Context context, Roll roll)
    {
        var bodies = context.TakesWithBodies(roll).ToDictionary(t => (object)t.Take, t => t.Body, ReferenceEqualityComparer.Instance);
        return take =>
            take.Shutter is { } set
            && bodies[take] is { } body
            && take.OpeningIn(body) is null
                ? new UnknownMark(set.Value, body)
                : null;
    }

    static Finding Find(Roll roll, Run<UnknownMark> run)
    {
        var (mark, body) = run.Fault;
        var names = body.ShutterMarks.Select(m => m.Name.Value).ToArray();
        return Check.At(
            roll,
            run.First,
            run.First.Shutter!.Place,
            Sentence.Of(
                names.Length > 0 ? "exposure/no-such-mark.message" : "exposure/no-such-mark.message.no-marks",
                ("mark", mark),
                ("body", body.Name.Value),
                ("takes", run.Slates)
            )
        ) with
        {
            Others =
            [
                new Related(body.ShutterMarks.FirstOrDefault()?.Place ?? body.Name.Place, Sentence.Of("exposure/no-such-mark.other")),
            ],
            Figures = names.Length > 0 ? [new Figure(Sentence.Of("exposure/no-such-mark.figure"), string.Join(", ", names))] : [],
            Advice =
                Likeness.Nearest(mark, names) is { } near ? Sentence.Of("common.did-you-mean", ("near", near))
                : names.Length > 0 ? Sentence.Of("exposure/no-such-mark.help")
                : Sentence.Of("exposure/no-such-mark.help.no-marks", ("mark", mark)),
        };
    }

    sealed record UnknownMark(string Mark, Body Body);
}
