namespace Spoolbook.Film.Reckonings;

/// <summary>How long a length of film runs.</summary>
public static class TimeReckoning
{
    /// <summary>Time in the camera and on the screen, and how fast the subject looks.</summary>
    /// <param name="length">As written.</param>
    /// <param name="gauge">The gauge.</param>
    /// <param name="camera">The camera speed.</param>
    /// <param name="projection">The projection speed.</param>
    /// <param name="units">For the length of film.</param>
    /// <exception cref="OverflowException">More frames than 64 bits count.</exception>
    public static Reckoning Of(FilmLength length, Gauge gauge, Speed camera, Speed projection, ReckoningUnits units)
    {
        var film = length.In(gauge, camera);
        var inCamera = film.Seconds(camera);
        var onScreen = film.Seconds(projection);
        return new Reckoning(
            $"{length} of {gauge} at {camera}",
            [
                new ReckoningLine("in the camera", RunningTime.Text(inCamera, 2), "min:s", inCamera.ToDouble()),
                new ReckoningLine("on the screen", RunningTime.Text(onScreen, 2), $"min:s at {projection}", onScreen.ToDouble()),
                ReckoningLine.Of("looks", RunningTime.ApparentSpeed(camera, projection), 2, "times as fast"),
            ],
            [
                ReckoningText.Film("length", film, gauge, units),
                ReckoningLine.Of("frames", new Ratio(film.Frames, 1), 0, "fr"),
                ReckoningLine.Of("speed", camera.FramesPerSecond, 3, "fr/s"),
                ReckoningLine.Of("feet a minute", RunningTime.FeetPerMinute(camera, gauge), 2, "ft/min"),
                ReckoningLine.Of("metres a minute", RunningTime.MetresPerMinute(camera, gauge), 2, "m/min"),
                ReckoningLine.Of("by true pitch, long", RunningTime.TrueMetresPerMinute(camera, gauge, PitchKind.LongPitch), 2, "m/min"),
                ReckoningLine.Of("by true pitch, short", RunningTime.TrueMetresPerMinute(camera, gauge, PitchKind.ShortPitch), 2, "m/min"),
            ]
        );
    }
}
