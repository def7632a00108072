using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Speeds;

static class IntervalTooTight
{
    public static readonly RecordCheck Check = new("speed/interval-too-tight", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        from take in roll.Takes
        where take.Interval is { Value.Sign: > 0 }
        let transport = context.Of(Tolerances.TransportTime)
        let open = take.Timed?.Value ?? Ratio.Zero
        let every = take.Interval!.Value
        where open + transport > every
        let interval = Seconds(every)
        select Check.At(
            roll,
            take,
            take.Interval!.Place,
            take.Timed is null
                ? Sentence.Of(
                    "speed/interval-too-tight.message.running",
                    ("take", take.Slate),
                    ("interval", interval),
                    ("transport", Seconds(transport))
                )
                : Sentence.Of(
                    "speed/interval-too-tight.message.held-open",
                    ("take", take.Slate),
                    ("interval", interval),
                    ("open", Seconds(open))
                )
        ) with
        {
            Others = take.Timed is { } timed ? [new(timed.Place, Sentence.Of("speed/interval-too-tight.other.held-open"))] : [],
            Figures =
            [
                new(Sentence.Of("speed/interval-too-tight.figure.interval"), interval),
                new(Sentence.Of("speed/interval-too-tight.figure.held-open"), Seconds(open)),
                new(Sentence.Of("speed/interval-too-tight.figure.to-move-the-film"), Seconds(transport)),
            ],
            Advice = Sentence.Of("speed/interval-too-tight.help", ("least", Seconds(open + transport))),
        };

    static string Seconds(Ratio seconds) => seconds.ToShortText(3) + " s";
}
