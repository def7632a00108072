using System.Collections.Immutable;
using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Kits;

/// <summary>Speeds that nobody engraves on a dial or a motor's switch, and lengths that no spool or magazine has.</summary>
static class UnlikelyDial
{
    // Nine is engraved on cameras for animation and on amateurs' (common practice).
    const int TheOddOne = 9;

    // From each speed of a dial to the next it is a half, twice, seldom three times (common practice). A slipped digit is ten times.
    const int MostStep = 4;

    // Film comes in these lengths, and bodies and magazines are built for them: on camera spools 50, 100 and 200 ft, on
    // cores 400 and more (Eastman Kodak, Student Filmmaker's Handbook, H-19); the others, and those in metres, from memory.
    static readonly ImmutableArray<int> _narrowFeet = [50, 100, 200, 400, 600, 800, 1200];
    static readonly ImmutableArray<int> _narrowMetres = [15, 30, 60, 120, 180, 240, 360];
    static readonly ImmutableArray<int> _wideFeet = [50, 100, 200, 400, 500, 800, 1000, 2000];
    static readonly ImmutableArray<int> _wideMetres = [15, 25, 30, 60, 120, 150, 240, 300, 600];

    // 30.5 m for 100 ft and 122 m for 400: rounded as on the can.
    static readonly Ratio _rounding = new(25, 10_000);

    public static IEnumerable<Finding> Of(Context context) =>
        [
            .. context.Production.Bodies.SelectMany(b => OfSpeeds(b.Name, b.Speeds, "kit/unlikely-figure.message.engraved")),
            .. context.Production.Bodies.SelectMany(OfSteps),
            .. context.Production.Motors.SelectMany(m => OfSpeeds(m.Name, m.Speeds, "kit/unlikely-figure.message.motor")),
            .. context.Production.Bodies.Select(b => OfTakes(context, b)).OfType<Finding>(),
        ];

    static IEnumerable<Finding> OfSpeeds(Located<string> piece, ImmutableArray<Located<Speed>> speeds, string message) =>
        speeds
            .Where(s => !IsEngraved(s.Value.FramesPerSecond))
            .Take(1)
            .Select(s => UnlikelyFigure.Find(piece, s.Place, message, s.Value.ToString()));

    // One that falls again after it is a finding already.
    static IEnumerable<Finding> OfSteps(Body body)
    {
        var steps = body.Speeds.Zip(body.Speeds.Skip(1)).ToArray();
        return steps.Any(s => s.First.Value >= s.Second.Value)
            ? []
            : steps
                .Where(s => s.Second.Value.FramesPerSecond > s.First.Value.FramesPerSecond * MostStep)
                .Take(1)
                .Select(s => UnlikelyFigure.Find(body.Name, s.Second.Place, "kit/unlikely-figure.message.step", s.Second.Value.ToString()));
    }

    // Even figures, fives, and what is no whole number: 23.976, 16 2/3.
    static bool IsEngraved(Ratio speed) => !speed.IsWhole || speed.Floor() is var n && (n % 2 == 0 || n % 5 == 0 || n <= TheOddOne);

    static Finding? OfTakes(Context context, Body body)
    {
        var gauge = context.Production.Gauge;
        if (body.Takes is not { } takes || SizesOf(gauge) is not var (feet, metres))
        {
            return null;
        }

        var sizes = feet.Select(f => FilmLength.OfFeet(f)).Concat(metres.Select(m => FilmLength.OfMetres(m)));
        return sizes.Any(s => IsAbout(takes.Value, s.In(gauge, Speed.Normal)))
            ? null
            : UnlikelyFigure.Find(body.Name, takes.Place, "kit/unlikely-figure.message.takes", context.Write(takes.Value));
    }

    static bool IsAbout(Footage written, Footage size) => Math.Abs(written.Frames - size.Frames) <= _rounding * size.Frames;

    // Of narrower and wider film there is too little left to say what is usual.
    static (ImmutableArray<int> Feet, ImmutableArray<int> Metres)? SizesOf(Gauge gauge) =>
        gauge == Gauge.Film16 || gauge == Gauge.Super16 ? (_narrowFeet, _narrowMetres)
        : gauge == Gauge.Film35 || gauge == Gauge.Film35Perf3 || gauge == Gauge.Film35Perf2 ? (_wideFeet, _wideMetres)
        : null;
}
