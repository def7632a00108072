namespace Spoolbook.Film.Reckonings;

/// <summary>A length of film in every unit.</summary>
public static class LengthReckoning
{
    /// <summary>The length in feet and frames, decimal feet, metres, frames and time, and the same frames in another gauge.</summary>
    /// <param name="length">As written.</param>
    /// <param name="from">The gauge that it was measured in.</param>
    /// <param name="to">The gauge to convert to; may be the same.</param>
    /// <param name="speed">For times, and for a length written as a time.</param>
    /// <param name="units">Whether feet or metres come first; both are given.</param>
    /// <exception cref="OverflowException">More frames than 64 bits count.</exception>
    public static Reckoning Of(FilmLength length, Gauge from, Gauge to, Speed speed, ReckoningUnits units)
    {
        var film = length.In(from, speed);
        var metres = ReckoningLine.Of("metres", film.Metres(to), 3, "m");
        ReckoningLine[] feet =
        [
            ReckoningText.Film("length", film, to, ReckoningUnits.Feet),
            ReckoningLine.Of("decimal feet", film.Feet(to), 4, "ft"),
        ];
        return new Reckoning(
            from == to ? $"{length} of {from}" : $"{length} of {from} in {to}",
            [
                .. units == ReckoningUnits.Metres ? [metres, .. feet] : feet.Append(metres),
                ReckoningLine.Of("frames", new Ratio(film.Frames, 1), 0, "fr"),
                new ReckoningLine("time", RunningTime.Text(film.Seconds(speed), 2), $"min:s at {speed}", film.Seconds(speed).ToDouble()),
            ],
            [
                ReckoningLine.Of("as written", length.ToString(), from.Name),
                ReckoningLine.Of($"frames a foot, {from}", from.FramesPerFoot, 3, "fr/ft"),
                ReckoningLine.Of("frames", new Ratio(film.Frames, 1), 0, "fr"),
                ReckoningLine.Of($"frames a foot, {to}", to.FramesPerFoot, 3, "fr/ft"),
                ReckoningLine.Of("by true pitch, long", film.TrueMillimetres(to, PitchKind.LongPitch) / Length.MillimetresPerFoot, 4, "ft"),
                ReckoningLine.Of(
                    "by true pitch, short",
                    film.TrueMillimetres(to, PitchKind.ShortPitch) / Length.MillimetresPerFoot,
                    4,
                    "ft"
                ),
            ]
        );
    }
}
