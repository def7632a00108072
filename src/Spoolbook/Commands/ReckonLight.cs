using System.CommandLine;
using Spoolbook.Film;
using Spoolbook.Film.Exposures;
using Spoolbook.Film.Reckonings;

namespace Spoolbook.Commands;

/// <summary>The options of <c>reckon exposure</c> about the light, the film's index and the meter.</summary>
internal sealed class ReckonLight
{
    readonly Option<Ratio?> _incident = ReckonOptions.Written(
        "--incident",
        "Light on the subject: 80fc (footcandles) or 860lx.",
        Measure.Lux
    );
    readonly Option<Ratio?> _reflected = ReckonOptions.Written("--reflected", "Light from the subject: 3200cd/m2.", Measure.Candelas);
    readonly Option<Stop?> _metered = ReckonOptions.Written(
        "--metered",
        "The stop that a meter gave for 24 and 180 degrees: 5.6.",
        Stop.Parse
    );
    readonly Option<string?> _sky = new("--daylight") { Description = "Daylight, judged by eye." };
    readonly Option<Ratio?> _c = ReckonOptions.Written(
        "--c",
        "The meter's incident constant, for one second: 250lx; 25fc unless given.",
        Measure.Lux
    );
    readonly Option<Ratio?> _k = ReckonOptions.Written(
        "--k",
        "The meter's reflected constant in cd s/m²: 14; 12.5 unless given.",
        Measure.Number
    );

    public ReckonLight() => _sky.Among([.. Daylight.Names]);

    /// <summary>The index on the can.</summary>
    public Option<Ratio?> Index { get; } = ReckonOptions.Written("--ei", "The film's exposure index, as on the can: 500.", Measure.Number);

    /// <summary>The index it is rated at.</summary>
    public Option<Ratio?> Rated { get; } =
        ReckonOptions.Written("--rated", "The index that it is rated at, where not the can's: 400; needs --ei.", Measure.Number);

    public IEnumerable<Option> All => [_incident, _reflected, _metered, _sky, Index, Rated, _c, _k];

    /// <summary>What does not fit together on the command line; null where nothing is wrong.</summary>
    public string? Objection(ParseResult parsed)
    {
        Option[] lights = [_incident, _reflected, _sky, _metered];
        var given = lights.Where(light => ReckonExposure.IsGiven(parsed, light)).ToArray();
        var indexed = ReckonExposure.IsGiven(parsed, Index);
        return given switch
        {
            { Length: > 1 } => $"{given[0].Name} and {given[1].Name} are two lights: give one",
            [var light] when light != _metered && !indexed => $"{light.Name} needs the film's index: add --ei 500",
            _ when ReckonExposure.IsGiven(parsed, Rated) && !indexed => "--rated needs the index on the can: add --ei 500",
            _ when ReckonExposure.IsGiven(parsed, _c) && !given.Contains(_incident) =>
                "--c is the constant for light on the subject: give that with --incident 80fc",
            _ when ReckonExposure.IsGiven(parsed, _k) && !given.Contains(_reflected) =>
                "--k is the constant for light from the subject: give that with --reflected 3200cd/m2",
            _ => null,
        };
    }

    public ExposureQuestion Question(ParseResult parsed, ExposureConditions conditions)
    {
        var plain = new ExposureQuestion();
        return plain with
        {
            Conditions = conditions,
            Index = parsed.GetValue(Index)?.ToDouble() ?? plain.Index,
            IncidentLux = parsed.GetValue(_incident)?.ToDouble(),
            ReflectedCandelas = parsed.GetValue(_reflected)?.ToDouble(),
            Metered = parsed.GetValue(_metered),
            Daylight = parsed.GetValue(_sky) is { } sky ? Daylight.Named(sky) : null,
            C = parsed.GetValue(_c)?.ToDouble() ?? plain.C,
            K = parsed.GetValue(_k)?.ToDouble() ?? plain.K,
        };
    }
}
