using System.CommandLine;
using Spoolbook.Film;
using Spoolbook.Film.Exposures;

namespace Spoolbook.Commands;

/// <summary>The options of <c>reckon exposure</c> about camera, lens and lab.</summary>
internal sealed class ReckonCamera
{
    readonly Option<Speed?> _speed = ReckonOptions.Speed("--speed", "Frames a second; 24 unless given.");
    readonly Option<Ratio?> _angle = ReckonOptions.Written(
        "--angle",
        "The shutter's full opening in degrees: 133; 180 unless given.",
        Measure.Degrees
    );
    readonly Option<ShutterOpening?> _shutter = ReckonOptions.Words(
        "--shutter",
        "The variable shutter: quarter or half (closed), closed, open, or the part left open: 3/4.",
        ReadOpening
    );
    readonly Option<Ratio?> _timed = ReckonOptions.Written(
        "--timed",
        "A timed exposure in place of speed and shutter: 2s.",
        Measure.Seconds,
        LongerThanNothing
    );
    readonly Option<Ratio?> _finder = ReckonOptions.Written(
        "--finder-loss",
        "The part of the light that the reflex finder takes: 20%.",
        Measure.Part,
        LessThanAll
    );
    readonly Option<LightFilter[]> _filters = ReckonOptions.RepeatedWords(
        "--filter",
        "A filter by its name: 85. May be given again.",
        ReadFilter
    );
    readonly Option<Ratio[]> _densities = ReckonOptions.Repeated("--nd", "A neutral density: 0.6. May be given again.", Measure.Density);
    readonly Option<Ratio[]> _factors = ReckonOptions.Repeated(
        "--factor",
        "A filter by its factor: 4. May be given again.",
        Measure.Number
    );
    readonly Option<Ratio?> _extension = ReckonOptions.Written(
        "--extension",
        "How far the lens is racked out beyond infinity: 5mm; needs --lens.",
        Measure.Millimetres
    );
    readonly Option<Ratio?> _lens = ReckonOptions.Written("--lens", "The focal length that is extended: 25mm.", Measure.Millimetres);
    readonly Option<string?> _subject = new("--subject") { Description = "How light the subject is, where the light on it was measured." };
    readonly Option<ReciprocityPoint[]> _reciprocity = ReckonOptions.Repeated(
        "--reciprocity",
        "A line of the stock's own table: at 10s open by 1 stop is 10s:1, 50s in place of 10s is 10s:50s. May be given again, rising.",
        ReciprocityPoint.Parse
    );
    readonly Option<Ratio?> _exponent = ReckonOptions.Written(
        "--reciprocity-exponent",
        "The stock's exponent, in place of its table: at 1.3 a metered 10s is 10^1.3 s, which is 20s.",
        Measure.Number,
        MakesLonger
    );
    readonly Option<double?> _push = ReckonOptions.Written("--push", "Stops of push; of pull where negative: 1, -1.", Stops.Parse);

    public ReckonCamera() => _subject.Among([.. SubjectTones.Names]);

    public IEnumerable<Option> All =>
        [
            _speed,
            _angle,
            _shutter,
            _timed,
            _finder,
            _filters,
            _densities,
            _factors,
            _extension,
            _lens,
            _subject,
            _reciprocity,
            _exponent,
            _push,
        ];

    /// <summary>What does not fit together on the command line; null where nothing is wrong.</summary>
    public string? Objection(ParseResult parsed)
    {
        Option[] turning = [_speed, _angle, _shutter];
        return ReckonExposure.IsGiven(parsed, _timed) && Array.Find(turning, option => ReckonExposure.IsGiven(parsed, option)) is { } other
                ? $"--timed says how long the shutter is open, and so does {other.Name}: leave one of them out"
            : ReckonExposure.IsGiven(parsed, _extension) != ReckonExposure.IsGiven(parsed, _lens)
                ? "--extension and --lens go together: write --extension 5mm --lens 25mm"
            : Reciprocity(parsed) is { } points && points.Zip(points.Skip(1)).Any(pair => pair.First.Seconds >= pair.Second.Seconds)
                ? "--reciprocity: give the lines of the table by rising time: --reciprocity 1s:0 --reciprocity 10s:1"
            : Reciprocity(parsed) is not null && ReckonExposure.IsGiven(parsed, _exponent)
                ? "--reciprocity and --reciprocity-exponent say the same of the stock: leave one of them out"
            : null;
    }

    public ExposureConditions Conditions(ParseResult parsed) =>
        new()
        {
            Speed = parsed.GetValue(_speed),
            Shutter = parsed.GetValue(_angle) is { } degrees ? new Shutter(degrees) : null,
            Opening = parsed.GetValue(_shutter),
            Timed = parsed.GetValue(_timed) is { } seconds ? new ExposureTime(seconds) : null,
            FinderLoss = parsed.GetValue(_finder),
            Filters = [.. parsed.GetValue(_filters) ?? []],
            Densities = [.. (parsed.GetValue(_densities) ?? []).Select(density => density.ToDouble())],
            FilterFactors = [.. (parsed.GetValue(_factors) ?? []).Select(factor => factor.ToDouble())],
            Extension =
                parsed.GetValue(_extension) is { } beyond && parsed.GetValue(_lens) is { } focal
                    ? new LensExtension(focal.ToDouble(), beyond.ToDouble())
                    : null,
            Subject = parsed.GetValue(_subject) is { } tone && SubjectTones.Named(tone) is { } known ? known : SubjectTone.Average,
            Reciprocity =
                Reciprocity(parsed) is { } points ? new ReciprocityTable(points)
                : parsed.GetValue(_exponent) is { } exponent ? new ReciprocityLaw(exponent.ToDouble())
                : null,
            Push = parsed.GetValue(_push) ?? 0,
        };

    ReciprocityPoint[]? Reciprocity(ParseResult parsed) => parsed.GetValue(_reciprocity) is { Length: > 0 } points ? points : null;

    static string? LongerThanNothing(Ratio seconds) => seconds.Sign > 0 ? null : "an exposure lasts longer than nothing: write 2s";

    static string? MakesLonger(Ratio exponent) =>
        exponent < 1 || exponent > 3 ? "an exponent makes long times longer, and none is above 3: write 1.3" : null;

    static string? LessThanAll(Ratio part) => part < 1 ? null : "a finder takes less than all of the light: write 20%";

    static (LightFilter? Value, string Objection) ReadFilter(string text) =>
        (
            LightFilter.Named(text),
            $"'{text}' is not a filter that is tabled here: write one of "
                + $"{string.Join(", ", LightFilter.All.Select(filter => filter.Name))}, or give its factor with --factor"
        );

    static (ShutterOpening? Value, string Objection) ReadOpening(string text) =>
        ShutterOpening.Named(text) is { } mark ? (mark, "")
        : Measure.Part(text).TryGet(out var open) ? (ShutterOpening.ByOpening($"{open} open", open), "")
        : (null, $"'{text}' is not a setting of the shutter: write quarter or half (closed), closed, open, or the part left open, 3/4");
}
