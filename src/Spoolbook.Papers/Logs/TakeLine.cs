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

    /// <summary>Whether it ran at a speed, and not frame by frame.</summary>
    public bool IsTimed => Take.SingleFrames is null && Take.Interval is null;

    public string Filters => Take.Filters.Length == 0 ? "–" : string.Join(" + ", Take.Filters.Select(f => f.Value));

    public string Remarks => string.Join("; ", AllRemarks());

    IEnumerable<string> AllRemarks()
    {
        var words = Format.Words;
        if (Wound)
        {
            yield return words["remark-wound"];
        }

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
        }

        if (Take.Timed is { } timed)
        {
            yield return words.Fill("remark-timed", ("seconds", Format.Seconds(timed.Value)));
        }

        if (Take.Motor is { } motor)
        {
            yield return words.Fill("remark-motor", ("motor", motor.Value));
        }

        if (Take.Sync is { } sync)
        {
            yield return words[sync.Value ? "remark-sync" : "remark-mute"];
        }

        if (Take.Note is { } note)
        {
            yield return note.Value;
        }
    }
}
