using System.CommandLine;
using System.Globalization;
using Spoolbook.Film;
using Spoolbook.Film.Lenses;
using Spoolbook.Film.Reckonings;

namespace Spoolbook.Commands;

/// <summary><c>reckon depth</c>: depth of field and field of view.</summary>
internal static class ReckonDepth
{
    public static (Command Command, Func<ParseResult, ReckonAnswer> Reckon) Build()
    {
        var lens = ReckonOptions.Written("--lens", "The focal length: 25mm.", Measure.Millimetres);
        var stop = ReckonOptions.Written("--stop", "The stop on the lens: 4, f/5.6, a split 4/5.6.", Stop.Parse);
        var focus = ReckonOptions.Written("--focus", "From the film plane: 6ft, 5ft 6in, 1.8m, or inf.", Distance.Parse);
        var gauge = ReckonOptions.Gauge("--gauge", "The gauge, for its camera aperture and usual circle of confusion; 16mm unless given.");
        var circle = ReckonOptions.Written(
            "--circle",
            "The circle of confusion: 0.015mm; the gauge's usual one unless given.",
            Measure.Millimetres
        );
        var blur = ReckonOptions.Written(
            "--blur",
            "The angle that a point may blur to, in place of --circle: 1/30deg.",
            Measure.Degrees,
            degrees => degrees < 90 ? null : "an angle of blur is below 90 degrees: write 1/30deg"
        );
        var units = ReckonOptions.Units();
        lens.Required = stop.Required = focus.Required = true;
        var command = new Command("depth", "Depth of field, hyperfocal distance, and the field that the lens sees.")
        {
            lens,
            stop,
            focus,
            gauge,
            circle,
            blur,
            units,
        };
        return (command, Reckon);

        ReckonAnswer Reckon(ParseResult parsed)
        {
            var focal = parsed.GetValue(lens).GetValueOrDefault().ToDouble();
            var at = parsed.GetValue(focus).GetValueOrDefault();
            var distance = at.IsInfinity ? double.PositiveInfinity : at.Millimetres.ToDouble();
            if (parsed.GetValue(circle) is not null && parsed.GetValue(blur) is not null)
            {
                return ReckonAnswer.Not("--circle and --blur both say how sharp is sharp: leave one of them out");
            }

            return distance < ThinLens.NearestFocus(focal)
                ? ReckonAnswer.Not(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"--focus: nearer than such a lens focuses: a lens needs four focal lengths from the film plane, here "
                            + $"{ThinLens.NearestFocus(focal):0.#}mm"
                    )
                )
                : ReckonAnswer.Of(
                    DepthReckoning.Of(
                        focal,
                        parsed.GetValue(stop).GetValueOrDefault(),
                        distance,
                        parsed.GetValue(gauge) ?? Gauge.Default,
                        parsed.GetValue(circle)?.ToDouble()
                            ?? (parsed.GetValue(blur) is { } angle ? DepthOfField.CircleOfAngle(focal, angle.ToDouble()) : null),
                        parsed.GetValue(units)
                    )
                );
        }
    }
}
