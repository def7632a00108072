using Spoolbook.Film;
using Spoolbook.Reading.Keys;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>Reads a take's map into its record.</summary>
/// <param name="stand">Where the film is before the take, on the sheet's own count; null where that is unknown.</param>
sealed class TakeReader(Footage? stand)
{
    /// <summary>The take; null where scene, number, mark or end cannot be read.</summary>
    public Take? Read(MapReader map)
    {
        // The speed comes first: a length written as a time runs at it, and later takes keep it.
        var written = map.Value(TakeKeys.Speed);
        map.Context.Speed = written?.Value ?? map.Context.Speed;
        var from = map.Value(TakeKeys.From);
        if (
            (map.Value(TakeKeys.Scene), map.Value(TakeKeys.Number), End(map, from), map.Value(TakeKeys.Mark))
            is not
            ({ } scene, { } number, { } to, { } mark)
        )
        {
            return map.LetGo<Take>();
        }

        return new Take(map.Head)
        {
            Scene = scene,
            Shot = map.Value(TakeKeys.Shot),
            Number = number,
            From = from,
            To = to,
            SpeedWritten = written,
            Speed = map.Context.Speed,
            Lens = map.Value(TakeKeys.Lens),
            Stop = map.Value(TakeKeys.Stop),
            Filters = map.Values(TakeKeys.Filter),
            Shutter = map.Value(TakeKeys.Shutter),
            Light = map.Value(TakeKeys.Light),
            Lamps = map.Value(TakeKeys.Lamps),
            Rated = map.Value(TakeKeys.Rated),
            Reading = map.Value(TakeKeys.Reading),
            Meter = map.Value(TakeKeys.Meter),
            MeteredAt = map.Value(TakeKeys.MeteredAt),
            Exposed = map.Value(TakeKeys.Exposed),
            Focus = map.Value(TakeKeys.Focus),
            Measured = map.Values(TakeKeys.Measured),
            Mark = mark,
            FadeIn = map.Value(TakeKeys.FadeIn),
            FadeOut = map.Value(TakeKeys.FadeOut),
            SingleFrames = map.Value(TakeKeys.SingleFrame),
            Interval = map.Value(TakeKeys.Interval),
            Timed = map.Value(TakeKeys.Timed),
            Reciprocity = map.Value(TakeKeys.Reciprocity),
            Sync = map.Value(TakeKeys.Sync),
            Mute = map.Value(TakeKeys.Mute),
            SoundRoll = map.Value(TakeKeys.SoundRoll),
            SlateAt = map.Value(TakeKeys.Slate),
            SecondSticks = map.Value(TakeKeys.SecondSticks),
            Motor = map.Value(TakeKeys.Motor),
            Wound = map.Value(TakeKeys.Wound),
            HandCranked = map.Value(TakeKeys.HandCranked),
            SlotFilled = map.Value(TakeKeys.Slot),
            FinderClosed = map.Value(TakeKeys.Finder),
            By = map.Value(TakeKeys.By),
            On = map.Value(TakeKeys.On),
        };
    }

    /// <summary>Where the take ends: as written, or its length past its start.</summary>
    Located<Footage>? End(MapReader map, Located<Footage>? from)
    {
        var to = map.Value(TakeKeys.To);
        var frames = map.Value(TakeKeys.Frames);
        if (map.Has(TakeKeys.To))
        {
            return to;
        }

        var start = map.Has(TakeKeys.From) ? from?.Value : stand;
        return frames is null || start is null ? null : new Located<Footage>(start.Value + frames.Value, frames.Place);
    }
}
