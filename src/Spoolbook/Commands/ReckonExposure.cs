using System.CommandLine;
using Spoolbook.Film.Exposures;
using Spoolbook.Film.Reckonings;

namespace Spoolbook.Commands;

/// <summary><c>reckon exposure</c>: the stop to set, term by term.</summary>
internal static class ReckonExposure
{
    public static (Command Command, Func<ParseResult, ReckonAnswer> Reckon) Build()
    {
        var camera = new ReckonCamera();
        var light = new ReckonLight();
        var command = new Command(
            "exposure",
            "The stop to set for the light, with what speed, shutter, finder, filters and lab cost; without light, times and stops only."
        );
        foreach (var option in camera.All.Concat(light.All))
        {
            command.Options.Add(option);
        }

        return (command, Reckon);

        ReckonAnswer Reckon(ParseResult parsed)
        {
            if ((camera.Objection(parsed) ?? light.Objection(parsed)) is { } objection)
            {
                return ReckonAnswer.Not(objection);
            }

            var index = parsed.GetValue(light.Index)?.ToDouble();
            var rated = parsed.GetValue(light.Rated)?.ToDouble();
            var conditions = camera.Conditions(parsed) with
            {
                Rating = index is { } can && rated is { } other ? new FilmRating(can, other) : null,
            };
            return ReckonAnswer.Of(ExposureReckoning.Of(light.Question(parsed, conditions)));
        }
    }

    /// <summary>Whether an option is on the command line.</summary>
    public static bool IsGiven(ParseResult parsed, Option option) => parsed.GetResult(option) is { Implicit: false };
}
