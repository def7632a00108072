using Spoolbook.Film;

namespace Spoolbook.Reading.Forms;

/// <summary>What the trade writes in its own way: lengths of film, speeds, stops, distances.</summary>
static class FilmForms
{
    public static readonly Form<Footage> Length = new(
        SheetChecks.BadLength,
        "a length of film",
        "Write feet and frames `31+12`, feet `31.3ft`, frames `1252fr`, metres `9.5m`, or seconds at the take's speed `12s`.",
        FormJson.Text(
            "^ *[0-9]+ *([+] *[0-9]+|(ft|feet|foot) *[0-9]+ *(fr|frames?)|(fr|frames?)) *$|^ *[0-9]+([.][0-9]+)? "
                + "*(ft|feet|foot|m|met(re|er)s?|s|sec|seconds?) *$"
        ),
        ALength
    )
    {
        Objection = (text, context) => ParseLength(text, context).Advice,
    };

    public static readonly Form<Speed> Speed = new(
        SheetChecks.BadSpeed,
        "a camera speed",
        "Write frames a second: `24`, `23.976` or `24000/1001`.",
        FormJson.Number("^ *[0-9]+([.][0-9]+)?( */ *[0-9]+([.][0-9]+)?)?( *(fps|fr/s))? *$") with
        {
            Least = 0,
            LeastItself = false,
        },
        ASpeed
    )
    {
        Objection = (text, _) => Film.Speed.Parse(text).Advice,
    };

    public static readonly Form<Stop> Stop = new(
        SheetChecks.BadStop,
        "a stop",
        "Write it as on the ring: `5.6`, `T2`, a split `4/5.6`, or with thirds `5.6 1/3`.",
        FormJson.Number("^.+$"),
        AStop
    )
    {
        Objection = (text, _) => Film.Stop.Parse(text).Advice,
    };

    public static readonly Form<double> Stops = new(
        SheetChecks.BadStop,
        "an amount of stops",
        "Write it as `1`, `-1`, `0.5`, `1/2` or `1 3/5`.",
        FormJson.Number(
            "^ *[-+]? *[0-9]+([.][0-9]+)? *$|^ *[-+]? *([0-9]+([.][0-9]+)? +)?[0-9]+([.][0-9]+)? */ *[0-9]*[1-9][0-9]*([.][0-9]+)? *$"
        ) with
        {
            Least = -30,
            Most = 30,
        },
        Amount
    )
    {
        Objection = (text, _) => Film.Stops.Parse(text).Advice,
    };

    public static readonly Form<double> StopsMore = new(
        SheetChecks.BadStop,
        "an amount of stops from nothing up",
        "Write it as `0`, `1`, `0.5`, `1/2` or `1 3/5`.",
        FormJson.Number("^ *[0-9]+([.][0-9]+)? *$|^ *([0-9]+([.][0-9]+)? +)?[0-9]+([.][0-9]+)? */ *[0-9]*[1-9][0-9]*([.][0-9]+)? *$") with
        {
            Least = 0,
            Most = 30,
        },
        (string text, ReadingContext context, out double value) =>
            Amount(text, context, out value)
            && value >= 0
            && !text.Contains('+', StringComparison.Ordinal)
            && !text.Contains('-', StringComparison.Ordinal)
    )
    {
        Objection = (text, _) => Film.Stops.Parse(text).Advice,
    };

    public static readonly Form<Distance> Distance = new(
        SheetChecks.BadDistance,
        "a distance",
        "Write it as `6ft`, `5ft 6in`, `1.8m`, `80cm`, or `inf` for infinity.",
        FormJson.Text(
            "^ *(inf|infinity|∞) *$|^ *[0-9]+([.][0-9]+)? *(ft|feet|foot|m|cm|mm|in) *$|^ *[0-9]+([.][0-9]+)? *(ft|feet|foot) "
                + "*[0-9]+([.][0-9]+)? *in *$"
        ),
        ADistance
    )
    {
        Objection = (text, _) => Film.Distance.Parse(text).Advice,
    };

    public static readonly Form<Gauge> Gauge = new(
        SheetChecks.BadChoice,
        "a gauge that Spoolbook knows",
        $"Write one of {string.Join(", ", Film.Gauge.All.Select(g => $"`{g.Name}`"))}.",
        FormJson.Text("^.+$") with
        {
            Words = [.. Film.Gauge.All.Select(g => g.Name)],
        },
        AGauge
    );

    static Parsed<FilmLength, FilmLengthFault> ParseLength(string text, ReadingContext context) => FilmLength.Parse(text, context.Gauge);

    static bool ALength(string text, ReadingContext context, out Footage value)
    {
        var read = ParseLength(text, context).TryGet(out var length);
        value = read ? length.In(context.Gauge, context.Speed) : Footage.Zero;
        return read;
    }

    static bool ASpeed(string text, ReadingContext context, out Speed value) => Film.Speed.Parse(text).TryGet(out value);

    static bool AStop(string text, ReadingContext context, out Stop value) => Film.Stop.Parse(text).TryGet(out value);

    static bool Amount(string text, ReadingContext context, out double value) => Film.Stops.Parse(text).TryGet(out value);

    static bool ADistance(string text, ReadingContext context, out Distance value) => Film.Distance.Parse(text).TryGet(out value);

    static bool AGauge(string text, ReadingContext context, out Gauge value)
    {
        var named = Film.Gauge.Named(text);
        value = named ?? Film.Gauge.Default;
        return named is not null;
    }
}
