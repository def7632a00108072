using Spoolbook.Film.Spools;

namespace Spoolbook.Film.Reckonings;

/// <summary>Film left on a spool, by its diameter.</summary>
public static class SpoolReckoning
{
    /// <summary>The film on a core or spool, and how far a millimetre of reading error puts it out.</summary>
    /// <param name="diameter">Over the film, in millimetres; not below the core's.</param>
    /// <param name="roll">The core and the thickness of the film.</param>
    /// <param name="gauge">For the count of frames, by its true long pitch.</param>
    /// <param name="speed">For the running time.</param>
    /// <param name="units">For the lengths.</param>
    /// <param name="thickest">How thick the film may be, in millimetres; null where its thickness is known.</param>
    /// <exception cref="ArgumentOutOfRangeException">A diameter below the core's.</exception>
    public static Reckoning Of(double diameter, FilmRoll roll, Gauge gauge, Speed speed, ReckoningUnits units, double? thickest = null)
    {
        var most = roll.LengthBetween(diameter, 1).Most;
        var least = (thickest is { } thick ? new FilmRoll(roll.Core, thick) : roll).LengthBetween(diameter, 1).Least;
        var left = Film(roll.LengthAt(diameter), gauge);
        return new Reckoning(
            $"{ReckoningText.Number(diameter, 1)} mm of {gauge} on a spool",
            [
                ReckoningText.Film("left", left, gauge, units),
                ReckoningText.Film(
                    thickest is null ? "at least, 1 mm less" : "at least, 1 mm less and thick film",
                    Film(least, gauge),
                    gauge,
                    units
                ),
                ReckoningText.Film("at most, 1 mm more", Film(most, gauge), gauge, units),
                new ReckoningLine("runs", RunningTime.Text(left.Seconds(speed), 0), $"min:s at {speed}", left.Seconds(speed).ToDouble()),
            ],
            [
                ReckoningLine.Of("diameter over the film, D", diameter, 2, "mm"),
                ReckoningLine.Of("core, d", roll.Core, 2, "mm"),
                ReckoningLine.Of("thickness of the film, t", roll.Thickness, 4, "mm"),
                .. thickest is { } thicker ? [ReckoningLine.Of("thick film", thicker, 4, "mm")] : Array.Empty<ReckoningLine>(),
                ReckoningLine.Of("π (D² − d²) / (4 t)", roll.LengthAt(diameter) / 1000, 2, "m"),
            ]
        );
    }

    static Footage Film(double millimetres, Gauge gauge) =>
        new((long)Math.Round(millimetres / gauge.Pitch.FrameStep(PitchKind.LongPitch).ToDouble(), MidpointRounding.AwayFromZero));
}
