using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Forecasts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Facts;

/// <summary>A roll's log as lines of a report, in the order in which it happened.</summary>
internal static class LogRows
{
    public static ImmutableArray<LogRow> Of(RollBook roll, Wording say)
    {
        // A strip has a move for each entry of the log and a layer for each take of it, both in the log's order.
        var layers = roll.Layers.GetEnumerator();
        var rows = ImmutableArray.CreateBuilder<LogRow>();
        var wound = false;
        foreach (var move in roll.Strip.Moves)
        {
            if (!LogLines.IsLine(move.Entry))
            {
                // A line of its own for each winding would hide the takes: the next take tells it.
                wound = true;
            }
            else if (move.Entry is Take && layers.MoveNext())
            {
                rows.Add(TakeRow(layers.Current, wound, roll, say));
                wound = false;
            }
            else
            {
                rows.Add(EventRow(move, say));
            }
        }

        return rows.DrainToImmutable();
    }

    static LogRow TakeRow(Layer layer, bool wound, RollBook roll, Wording say)
    {
        var take = layer.Take;
        return new LogRow(true)
        {
            Number = Wording.Number(layer.Index + 1),
            Scene = take.Scene.Value,
            Shot = take.Shot?.Value ?? "",
            Take = Wording.Number(take.Number.Value),
            From = say.Length(layer.Span.From),
            To = say.Length(layer.Span.To),
            Length = say.Length(layer.Span.Length),
            Seconds = take.SingleFrames is null && take.Interval is null ? say.Seconds(layer.Span.Length.Seconds(take.Speed)) : "–",
            Speed = take.SingleFrames is null && take.Interval is null ? say.AsWritten(take.Speed) : say.Words["single-frame-short"],
            Lens = Wording.OrDash(take.Lens),
            Stop = say.AsWritten(take.Stop),
            Filter = take.Filters.Length == 0 ? "–" : string.Join(" + ", take.Filters.Select(f => f.Value)),
            Focus = say.Focus(take.Focus?.Value),
            Mark = say.Mark(take.Mark.Value),
            Pass = roll.Strip.Passes > 1 ? Wording.Number(layer.Pass) : "",
            Remarks = string.Join("; ", Remarks(layer, wound, say)),
        };
    }

    static IEnumerable<string> Remarks(Layer layer, bool wound, Wording say)
    {
        var take = layer.Take;
        var words = say.Words;
        if (wound)
        {
            yield return words["remark-wound"];
        }

        if (layer.FadeIn != Footage.Zero)
        {
            yield return words.Fill("remark-fade-in", ("frames", Wording.Number(layer.FadeIn.Frames)));
        }

        if (layer.FadeOut != Footage.Zero)
        {
            yield return words.Fill("remark-fade-out", ("frames", Wording.Number(layer.FadeOut.Frames)));
        }

        if (take.Shutter is { } shutter)
        {
            yield return words.Fill("remark-shutter", ("mark", shutter.Value));
        }

        if (take.Exposed is { } exposed)
        {
            yield return words.Fill("remark-exposed", ("stops", say.Stops(exposed.Value)));
        }

        if (take.SingleFrames is { } frames)
        {
            yield return words.Fill("remark-single-frames", ("frames", Wording.Number(frames.Value)));
        }

        if (take.Interval is { } interval)
        {
            yield return words.Fill("remark-interval", ("seconds", say.Seconds(interval.Value)));
        }

        if (take.Timed is { } timed)
        {
            yield return words.Fill("remark-timed", ("seconds", say.Seconds(timed.Value)));
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

    static LogRow EventRow(Move move, Wording say)
    {
        var text = Event(move, say);
        return new LogRow(false)
        {
            From = say.Length(move.From),
            To = say.Length(move.To),
            Remarks = move.Entry.Note is { Value.Length: > 0 } note && move.Entry is not Remark ? text + ": " + note.Value : text,
        };
    }

    static string Event(Move move, Wording say)
    {
        var words = say.Words;
        return move.Entry switch
        {
            Rewind rewind => words.Fill("event-rewind", ("to", say.Length(move.To)))
                + (rewind.InDark?.Value == true ? ", " + words["event-in-dark"] : "")
                + (rewind.ShutterClosed is { } closed ? ", " + words[closed.Value ? "event-shutter-closed" : "event-shutter-open"] : "")
                + (rewind.CounterZeroed?.Value == true ? ", " + words["event-counter-zeroed"] : ""),
            RunOff runOff => words.Fill("event-run-off", ("to", say.Length(move.To)))
                + (runOff.Capped is { } capped ? ", " + words[capped.Value ? "event-capped" : "event-not-capped"] : ""),
            Fog fog => words.Fill("event-fog", ("at", say.Length(move.From)), ("before", say.LengthWithUnit(fog.Before.Value)), ("after", say.LengthWithUnit(fog.After.Value))),
            Wind => words["event-wind"],
            Reload reload => words.Fill("event-reload", ("body", Wording.OrDash(reload.Body)), ("zero", say.LengthWithUnit(reload.ZeroMoved?.Value ?? Footage.Zero))),
            _ => move.Entry.Note?.Value ?? "",
        };
    }
}
