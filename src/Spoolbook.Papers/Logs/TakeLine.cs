using Spoolbook.Film;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Logs;

/// <summary>A take with all that a column of the log may say of it.</summary>
/// <param name="Wound">Whether the spring was wound for it by an entry of its own.</param>
internal sealed record TakeLine(Layer Layer, bool Wound, PaperFormat Format)
{
    public Take Take => Layer.Take;

    /// <summary>The film that it is on; null where nothing is said of what else is there.</summary>
    public Strip? Strip { get; init; }

    /// <summary>Whether it ran at a speed, and not frame by frame.</summary>
    public bool IsTimed => Take.SingleFrames is null && Take.Interval is null;

    public string Filters => Take.Filters.Length == 0 ? "–" : string.Join(" + ", Take.Filters.Select(f => f.Value));

    /// <summary>The sound roll, or that there is none.</summary>
    public string Sound =>
        Layer.SoundRoll
        ?? (
            Take.Mute?.Value == true || Take.Sync?.Value == false ? Format.Words["remark-mute"]
            : Take.RunsInSync ? Format.Words["remark-sync"]
            : PaperFormat.Dash
        );

    // A roll with sound has a column for it, which says so already: of a take with a sound roll, that it is in sync.
    bool IsSaidInColumn => (Take.RunsInSync || Layer.SoundRoll is null) && Strip?.Roll.Takes.Any(t => t.SaysSound) == true;

    /// <summary>What drove it: the motor, or a spring wound for it.</summary>
    public string Drive =>
        Take.Motor is { } motor ? motor.Value
        : Wound ? Format.Words["wound-sign"]
        : "";

    public string Remarks => string.Join("; ", AllRemarks());

    IEnumerable<string> AllRemarks()
    {
        var words = Format.Words;
        if (Take.Wound?.Value == true)
        {
            yield return words["remark-wound-within"];
        }

        if (Layer.FadeIn != Footage.Zero)
        {
            yield return words.Fill("remark-fade-in", ("frames", PaperFormat.Number(Layer.FadeIn.Frames)));
        }

        if (Layer.FadeOut != Footage.Zero)
        {
            yield return words.Fill("remark-fade-out", ("frames", PaperFormat.Number(Layer.FadeOut.Frames)));
        }

        if (Take.Shutter is { } shutter)
        {
            yield return words.Fill("remark-shutter", ("mark", shutter.Value));
        }

        if (Take.Exposed is { } exposed)
        {
            yield return words.Fill("remark-exposed", ("stops", Format.Stops(exposed.Value)));
        }

        if (Take.SingleFrames is { } frames)
        {
            yield return words.Fill("remark-single-frames", ("frames", PaperFormat.Number(frames.Value)));
        }

        if (Take.Interval is { } interval)
        {
            yield return words.Fill("remark-interval", ("seconds", Format.Seconds(interval.Value)));
            if (TimeLapse.Solve(Take.Speed, interval.Value, frames: Layer.Span.Length).TryGet(out var lapse))
            {
                yield return words.Fill("remark-event", ("time", PaperFormat.Clock(lapse.Event)));
            }
        }

        if (Take.Timed is { } timed)
        {
            yield return words.Fill("remark-timed", ("seconds", Format.Seconds(timed.Value)));
        }

        if (Take.Sync is { } sync && (!IsSaidInColumn || (sync.Value && !Take.RunsInSync)))
        {
            // Nothing holds a spring, or a hand on the crank, to its speed.
            yield return words[
                Take.RunsInSync ? "remark-sync"
                : sync.Value ? "remark-not-sync"
                : "remark-mute"
            ];
        }

        if (Take.SlateAt is { Value: not SlatePlace.Head } slate)
        {
            yield return words[slate.Value == SlatePlace.Tail ? "remark-tail-slate" : "remark-no-slate"];
        }

        if (Take.SecondSticks?.Value == true)
        {
            yield return words["remark-second-sticks"];
        }

        if (Take.MeteredAt is { } time)
        {
            yield return words.Fill("remark-metered-at", ("time", Format.AsWritten(time.Value)));
        }

        if (Take.Measured.Length > 0)
        {
            yield return words.Fill("remark-measured", ("distance", string.Join("–", Take.Measured.Select(m => Format.Focus(m.Value)))));
        }

        if (Take.SlotFilled?.Value == false)
        {
            yield return words["remark-slot-empty"];
        }

        foreach (var (span, by) in Strip?.CountedWorse(Layer) ?? [])
        {
            yield return words.Fill(
                "remark-counts-as",
                ("from", Format.Length(span.From)),
                ("to", Format.Length(span.To)),
                ("mark", Format.Mark(by.Take.Mark.Value)),
                ("slate", by.Take.Slate.ToString())
            );
        }

        if (Take.Note is { } note)
        {
            yield return note.Value;
        }
    }
}
