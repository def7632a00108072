using System.CommandLine;
using Spoolbook.Film;
using Spoolbook.Film.Reckonings;

namespace Spoolbook.Commands;

/// <summary><c>reckon time</c>: how long a length runs.</summary>
internal static class ReckonTime
{
    public static (Command Command, Func<ParseResult, ReckonAnswer> Reckon) Build()
    {
        var length = ReckonOptions.Length();
        var gauge = ReckonOptions.Gauge("--gauge", "The gauge; 16mm unless given.");
        var at = ReckonOptions.Speed("--at", "The speed in the camera; 24 unless given.");
        var projected = ReckonOptions.Speed("--projected-at", "The speed on the screen; 24 unless given.");
        var units = ReckonOptions.Units();
        var command = new Command("time", "How long a length runs in the camera and on the screen, and how fast it looks.")
        {
            length,
            gauge,
            at,
            projected,
            units,
        };
        return (command, Reckon);

        ReckonAnswer Reckon(ParseResult parsed)
        {
            var of = parsed.GetValue(gauge) ?? Gauge.Default;
            var read = FilmLength.Parse(parsed.GetRequiredValue(length), of);
            return read.TryGet(out var film)
                ? ReckonAnswer.Of(
                    TimeReckoning.Of(
                        film,
                        of,
                        parsed.GetValue(at) ?? Speed.Normal,
                        parsed.GetValue(projected) ?? Speed.Normal,
                        parsed.GetValue(units)
                    )
                )
                : ReckonAnswer.Not(read.Slip!);
        }
    }
}
