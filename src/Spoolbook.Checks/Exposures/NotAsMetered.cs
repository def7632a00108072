using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Exposures;

static class NotAsMetered
{
    public static readonly RecordCheck Check = new("exposure/not-as-metered", Level.Note, Look);

    // Less than a third is the breadth of the mark.
    const double LeastStops = 0.3;

    // A habit takes some takes to be one, and nine in ten of them to hold.
    const int FewestMetered = 5;
    const double MostOthers = 0.1;

    // A crew that opens up or stops down by feel does so again and again, and is not asked about each take.
    static IEnumerable<Finding> Look(Context context)
    {
        var metered = Metering.Of(context).Where(m => m.Take.Mark.Value != Mark.Test).ToArray();
        var off = metered.Where(m => Math.Abs(m.Off) > LeastStops).ToArray();
        if (metered.Length < FewestMetered || off.Length - 1 > MostOthers * (metered.Length - 1))
        {
            return [];
        }

        RecordCheck[] others = [Over.Check, Under.Check, NoSuchStop.Check];
        var wrong = others.SelectMany(c => c.Look(context)).Select(f => f.Take).ToHashSet(StringComparer.Ordinal);
        return off.Where(m => !wrong.Contains(m.Take.Slate) && m is { ForgotFilter: false, ForgotShutter: false })
            .Select(m => Find(m, metered.Length - off.Length));
    }

    static Finding Find(Metering metering, int others) =>
        Check.At(
            metering.Roll,
            metering.Take,
            metering.Take.Stop!.Place,
            Sentence.Of(
                "exposure/not-as-metered.message",
                ("take", metering.Take.Slate),
                ("amount", Latitude.OverOrUnder(metering.Off)),
                ("stop", metering.Take.Stop.Value.ToString())
            )
        ) with
        {
            Others = [new Related(metering.Take.Reading!.Place, Sentence.Of("exposure/not-as-metered.other"))],
            Figures =
            [
                .. Latitude.Figures(metering),
                new Figure(Sentence.Of("exposure/not-as-metered.figure.others"), Context.Number(others)),
            ],
            Advice = Sentence.Of(
                "exposure/not-as-metered.help",
                ("exposed", Context.Exposed(metering.Off + (metering.Take.Exposed?.Value ?? 0)))
            ),
        };
}
