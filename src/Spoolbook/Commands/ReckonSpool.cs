using System.CommandLine;
using Spoolbook.Film;
using Spoolbook.Film.Reckonings;
using Spoolbook.Film.Spools;

namespace Spoolbook.Commands;

/// <summary><c>reckon spool</c>: film left, by the diameter.</summary>
internal static class ReckonSpool
{
    public static (Command Command, Func<ParseResult, ReckonAnswer> Reckon) Build()
    {
        var diameter = ReckonOptions.Written("--diameter", "Over the film: 61mm, 6.1cm, 2.4in.", Measure.Millimetres);
        var core = ReckonOptions.Written(
            "--core",
            "Of the core or the spool's barrel; 1.25in, a 100 ft daylight spool's, unless given. Measure your own.",
            Measure.Millimetres
        );
        var thickness = ReckonOptions.Written(
            "--thickness",
            "Of the film; 0.006in unless given, and 0.0065in, as of colour film, for the least.",
            Measure.Millimetres
        );
        var gauge = ReckonOptions.Gauge("--gauge", "The gauge; 16mm unless given.");
        var at = ReckonOptions.Speed("--at", "The speed, for how long it runs; 24 unless given.");
        var units = ReckonOptions.Units();
        diameter.Required = true;
        var command = new Command("spool", "The film on a spool or core, by its diameter, and what a millimetre of reading error makes.")
        {
            diameter,
            core,
            thickness,
            gauge,
            at,
            units,
        };
        return (command, Reckon);

        ReckonAnswer Reckon(ParseResult parsed)
        {
            var over = parsed.GetValue(diameter).GetValueOrDefault().ToDouble();
            var roll = new FilmRoll(
                parsed.GetValue(core)?.ToDouble() ?? FilmCore.DaylightSpool,
                parsed.GetValue(thickness)?.ToDouble() ?? FilmCore.Acetate
            );
            return over < roll.Core
                ? ReckonAnswer.Not("--diameter: smaller than the core: give the diameter over the film, and the core's with --core")
                : ReckonAnswer.Of(
                    SpoolReckoning.Of(
                        over,
                        roll,
                        parsed.GetValue(gauge) ?? Gauge.Default,
                        parsed.GetValue(at) ?? Speed.Normal,
                        parsed.GetValue(units),
                        parsed.GetValue(thickness) is null ? FilmCore.Colour : null
                    )
                );
        }
    }
}
