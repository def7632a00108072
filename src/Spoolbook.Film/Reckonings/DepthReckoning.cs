using Spoolbook.Film.Lenses;

namespace Spoolbook.Film.Reckonings;

/// <summary>Depth of field and field of view of a lens at a focus.</summary>
public static class DepthReckoning
{
    /// <summary>Near and far limits, total depth, hyperfocal distance and field.</summary>
    /// <param name="focal">The focal length in millimetres, above 0.</param>
    /// <param name="stop">The f-stop on the lens; its engraved number is taken.</param>
    /// <param name="focus">Millimetres from the film plane, at least four focal lengths; or infinity.</param>
    /// <param name="gauge">For the camera aperture, and the circle of confusion where none is given.</param>
    /// <param name="circle">The circle of confusion in millimetres, above 0; null takes the gauge's usual one.</param>
    /// <param name="units">For the distances.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure outside its range.</exception>
    public static Reckoning Of(double focal, Stop stop, double focus, Gauge gauge, double? circle, ReckoningUnits units)
    {
        var confusion = circle ?? gauge.CircleOfConfusion;
        var depth = DepthOfField.Of(focal, stop.EngravedNumber, confusion, focus);
        var view = FieldOfView.Of(focal, gauge.Aperture);
        return new Reckoning(
            $"{ReckoningText.Number(focal, 2)} mm at {stop} on {gauge}",
            [
                ReckoningText.Distance("sharp from", depth.Near, units),
                ReckoningText.Distance("to", depth.Far, units),
                ReckoningText.Distance("depth", depth.Total, units),
                ReckoningText.Distance("hyperfocal", depth.Hyperfocal + focal, units),
                ReckoningLine.Of("field across", view.Horizontal, 1, "degrees"),
                ReckoningLine.Of("field up and down", view.Vertical, 1, "degrees"),
                .. FieldAt(focal, gauge, focus, units),
            ],
            [
                ReckoningText.Distance("focus, from the film plane", focus, units),
                ReckoningLine.Of("f-number", stop.EngravedNumber, 2, ""),
                ReckoningLine.Of("circle of confusion", confusion, 4, circle is null ? "mm, usual for the gauge" : "mm, as given"),
                ReckoningLine.Of("F² / (N c)", depth.Hyperfocal, 0, "mm from the lens"),
                ReckoningLine.Of("camera aperture", $"{gauge.Aperture.Width} × {gauge.Aperture.Height}", "mm"),
            ]
        );
    }

    static IEnumerable<ReckoningLine> FieldAt(double focal, Gauge gauge, double focus, ReckoningUnits units)
    {
        if (double.IsPositiveInfinity(focus))
        {
            yield break;
        }

        var (width, height) = FieldOfView.At(focal, gauge.Aperture, focus);
        yield return ReckoningText.Distance("width at the focus", width, units);
        yield return ReckoningText.Distance("height at the focus", height, units);
    }
}
