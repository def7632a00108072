using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Exposures;

static class StopNotOnLens
{
    public static readonly RecordCheck Check = new("exposure/stop-not-on-lens", Level.Error, Look);

    // A ring can be set between its marks, by eye.
    const double ByEye = 1 / 6.0;

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        from take in roll.Takes
        let lens = context.Production.LensNamed(take.Lens?.Value)
        let finding = lens is not null && take.Stop is { } stop ? Beyond(roll, take, stop, lens) : null
        where finding is not null
        select finding;

    /// <summary>Whether a take is at a stop that its lens does not have. Then no other check can judge the stop.</summary>
    public static bool IsSo(Context context, Roll roll, Take take) =>
        take.Stop is { } stop && context.Production.LensNamed(take.Lens?.Value) is { } lens && Beyond(roll, take, stop, lens) is not null;

    static Finding? Beyond(Roll roll, Take take, Located<Stop> stop, Lens lens)
    {
        var set = stop.Value.Av;
        var (end, says) =
            lens.Widest?.Value.Av is { } widest && set < widest - ByEye ? (lens.Widest, "exposure/stop-not-on-lens.message.wide")
            : lens.Smallest?.Value.Av is { } smallest && set > smallest + ByEye ? (lens.Smallest, "exposure/stop-not-on-lens.message.small")
            : (null, "");
        return end is null
            ? null
            : Check.At(
                roll,
                take,
                stop.Place,
                Sentence.Of(
                    says,
                    ("take", take.Slate),
                    ("stop", stop.Value.ToString()),
                    ("lens", lens.Name.Value),
                    ("end", end.Value.ToString())
                )
            ) with
            {
                Others = [new Related(end.Place, Sentence.Of("exposure/stop-not-on-lens.other.the-end-of-its-ring"))],
                Figures =
                [
                    new Figure(Sentence.Of("exposure/stop-not-on-lens.figure.set"), stop.Value.ToString()),
                    new Figure(Sentence.Of("exposure/stop-not-on-lens.figure.end-of-the-ring"), end.Value.ToString()),
                ],
                Advice = Sentence.Of("exposure/stop-not-on-lens.help"),
            };
    }
}
