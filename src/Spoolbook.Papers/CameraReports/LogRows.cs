using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Forecasts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.CameraReports;

/// <summary>A roll's log as lines of a report, in order.</summary>
internal static class LogRows
{
    public static ImmutableArray<LogRow> Of(RollBook roll, PaperFormat format)
    {
        // A strip has a move for each entry of the log and a layer for each take of it, both in the log's order.
        var layers = roll.Layers.GetEnumerator();
        var rows = ImmutableArray.CreateBuilder<LogRow>();
        var wound = false;
        foreach (var move in roll.Strip.Moves)
        {
            if (!LogLines.IsLine(move.Entry))
            {
                // A line for each winding would hide the takes, so the next take's line mentions it.
                wound = true;
            }
            else if (move.Entry is Take && layers.MoveNext())
            {
                rows.Add(TakeRow(layers.Current, wound, roll, format));
                wound = false;
            }
            else
            {
                rows.Add(EventRow(move, format));
            }
        }

        return rows.DrainToImmutable();
    }

    static LogRow TakeRow(Layer layer, bool wound, RollBook roll, PaperFormat format)
    {
        var take = layer.Take;
        return new LogRow(true)
        {
            Number = PaperFormat.Number(layer.Index + 1),
            Scene = take.Scene.Value,
            Shot = take.Shot?.Value ?? "",
            Take = PaperFormat.Number(take.Number.Value),
            From = format.Length(layer.Span.From),
            To = format.Length(layer.Span.To),
            Length = format.Length(layer.Span.Length),
            Seconds = take.SingleFrames is null && take.Interval is null ? format.Seconds(layer.Span.Length.Seconds(take.Speed)) : "–",
            Speed = take.SingleFrames is null && take.Interval is null ? format.AsWritten(take.Speed) : format.Words["single-frame-short"],
            Lens = PaperFormat.OrDash(take.Lens),
            Stop = format.AsWritten(take.Stop),
            Filter = take.Filters.Length == 0 ? "–" : string.Join(" + ", take.Filters.Select(f => f.Value)),
            Focus = format.Focus(take.Focus?.Value),
            Mark = format.Mark(take.Mark.Value),
            Pass = roll.Strip.Passes > 1 ? PaperFormat.Number(layer.Pass) : "",
            Remarks = string.Join("; ", Remarks(layer, wound, format)),
        };
    }

    static IEnumerable<string> Remarks(Layer layer, bool wound, PaperFormat format)
    {
        var take = layer.Take;
        var words = format.Words;
        if (wound)
        {
            yield return words["remark-wound"];
        }

        if (layer.FadeIn != Footage.Zero)
        {
            yield return words.Fill("remark-fade-in", ("frames", PaperFormat.Number(layer.FadeIn.Frames)));
        }

        if (layer.FadeOut != Footage.Zero)
        {
            yield return words.Fill("remark-fade-out", ("frames", PaperFormat.Number(layer.FadeOut.Frames)));
        }

        if (take.Shutter is { } shutter)
        {
            yield return words.Fill("remark-shutter", ("mark", shutter.Value));
        }

        if (take.Exposed is { } exposed)
        {
            yield return words.Fill("remark-exposed", ("stops", format.Stops(exposed.Value)));
        }

        if (take.SingleFrames is { } frames)
        {
            yield return words.Fill("remark-single-frames", ("frames", PaperFormat.Number(frames.Value)));
        }

        if (take.Interval is { } interval)
        {
            yield return words.Fill("remark-interval", ("seconds", format.Seconds(interval.Value)));
        }

        if (take.Timed is { } timed)
        {
            yield return words.Fill("remark-timed", ("seconds", format.Seconds(timed.Value)));
        }

        if (take.Motor is { } motor)
        {
            yield return words.Fill("remark-motor", ("motor", motor.Value));
        }

        if (take.Sync is { } sync)
        {
            yield return words[sync.Value ? "remark-sync" : "remark-mute"];
        }

        if (take.Note is { } note)
        {
            yield return note.Value;
        }
    }

    static LogRow EventRow(Move move, PaperFormat format)
    {
        var text = Event(move, format);
        return new LogRow(false)
        {
            From = format.Length(move.From),
            To = format.Length(move.To),
            Remarks = move.Entry.Note is { Value.Length: > 0 } note && move.Entry is not Remark ? text + ": " + note.Value : text,
        };
    }

    static string Event(Move move, PaperFormat format)
    {
        var words = format.Words;
        return move.Entry switch
        {
            Rewind rewind => words.Fill("event-rewind", ("to", format.Length(move.To)))
                + (rewind.InDark?.Value == true ? ", " + words["event-in-dark"] : "")
                + (rewind.ShutterClosed is { } closed ? ", " + words[closed.Value ? "event-shutter-closed" : "event-shutter-open"] : "")
                + (rewind.CounterZeroed?.Value == true ? ", " + words["event-counter-zeroed"] : ""),
            RunOff runOff => words.Fill("event-run-off", ("to", format.Length(move.To)))
                + (runOff.Capped is { } capped ? ", " + words[capped.Value ? "event-capped" : "event-not-capped"] : ""),
            Fog fog => words.Fill(
                "event-fog",
                ("at", format.Length(move.From)),
                ("before", format.LengthWithUnit(fog.Before.Value)),
                ("after", format.LengthWithUnit(fog.After.Value))
            ),
            Wind => words["event-wind"],
            Reload reload => words.Fill(
                "event-reload",
                ("body", PaperFormat.OrDash(reload.Body)),
                ("zero", format.LengthWithUnit(reload.ZeroMoved?.Value ?? Footage.Zero))
            ),
            _ => move.Entry.Note?.Value ?? "",
        };
    }
}
