using System.Globalization;
using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Counters;

static class NoTimeBetween
{
    public static readonly RollCheck Check = new("counter/no-time-between", Level.Note, Round.Strips, Look);

    // Hours are written to the minute, so two a minute apart can be nearly two.
    static readonly Ratio _minute = new(60, 1);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        from pair in Timed(book).Zip(Timed(book).Skip(1))
        let between = (long)(pair.Second.When - pair.First.When).TotalSeconds
        where !book.Roll.IsPractice && between >= 0
        let first = pair.First.Layer
        let second = pair.Second.Layer
        let shortest = Shorter(Running(first), Running(second))
        let runs = between + _minute < shortest
        where runs || (between < context.Of(Tolerances.SetUpTime) && IsNewSetUp(first.Take, second.Take))
        select Find(book.Roll, first.Take, second.Take, runs ? shortest : null);

    static IEnumerable<(Layer Layer, DateTime When)> Timed(RollBook book) =>
        book
            .Layers.Zip(book.Walk.Takes, (layer, take) => (layer, take.Moment.When))
            .Where(t => t.When is not null)
            .Select(t => (t.layer, t.When!.Value));

    // Nobody says whether the hour is that of the start or of the end, so the shorter of the two counts. Of single frames nobody
    // knows how long they took.
    static Ratio Running(Layer layer) =>
        layer.Take is { Interval: { } interval } ? layer.Span.Length.Frames * interval.Value
        : layer.Take.IsFrameByFrame || layer.Take.HandCranked?.Value == true ? Ratio.Zero
        : layer.Span.Length.Frames / layer.Take.Speed.FramesPerSecond;

    static Ratio Shorter(Ratio a, Ratio b) => a < b ? a : b;

    static bool IsNewSetUp(Take first, Take second) =>
        first.ShotName != second.ShotName
        || (first.Lens is not null && second.Lens is not null && first.Lens.Value != second.Lens.Value)
        || !first.Filters.Select(f => f.Value).SequenceEqual(second.Filters.Select(f => f.Value));

    static Finding Find(Roll roll, Take first, Take second, Ratio? running)
    {
        var at = first.At!.Value.ToString("HH:mm", CultureInfo.InvariantCulture);
        var then = second.At!.Value.ToString("HH:mm", CultureInfo.InvariantCulture);
        return Check.At(
            roll,
            second,
            second.At.Place,
            running is { } seconds
                ? Sentence.Of(
                    "counter/no-time-between.message.runs",
                    ("take", second.Slate),
                    ("at", then),
                    ("before", first.Slate),
                    ("before-at", at),
                    ("seconds", seconds.ToShortText(0))
                )
                : Sentence.Of("counter/no-time-between.message.set-up", ("take", second.Slate), ("at", then), ("before", first.Slate))
        ) with
        {
            Level = running is null ? Level.Note : Level.Warning,
            Others = [new Related(first.At.Place, Sentence.Of("counter/no-time-between.other", ("take", first.Slate)))],
            Advice = Sentence.Of("counter/no-time-between.help"),
        };
    }
}
