using System.CommandLine;
using Spoolbook.Film;
using Spoolbook.Film.Reckonings;

namespace Spoolbook.Commands;

/// <summary><c>reckon length</c>: a length of film in every unit, and in another gauge.</summary>
internal static class ReckonLength
{
    public static (Command Command, Func<ParseResult, ReckonAnswer> Reckon) Build()
    {
        var length = ReckonOptions.Length();
        var from = ReckonOptions.Gauge("--from", "The gauge that the length is of; 16mm unless given.");
        var to = ReckonOptions.Gauge("--to", "The gauge to answer for; the same unless given.");
        var at = ReckonOptions.Speed("--at", "The speed, for times; 24 unless given.");
        var units = ReckonOptions.Units();
        var command = new Command(
            "length",
            "A length in feet and frames, decimal feet, metres, frames and time, and the same frames in another gauge."
        )
        {
            length,
            from,
            to,
            at,
            units,
        };
        return (command, Reckon);

        ReckonAnswer Reckon(ParseResult parsed)
        {
            var written = parsed.GetValue(from) ?? Gauge.Default;
            var read = FilmLength.Parse(parsed.GetRequiredValue(length), written);
            return read.TryGet(out var film)
                ? ReckonAnswer.Of(
                    LengthReckoning.Of(
                        film,
                        written,
                        parsed.GetValue(to) ?? written,
                        parsed.GetValue(at) ?? Speed.Normal,
                        parsed.GetValue(units)
                    )
                )
                : ReckonAnswer.Not(read.Slip!);
        }
    }
}
