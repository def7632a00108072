using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Forms;

/// <summary>What the trade writes its own way: lengths of film, speeds, stops, distances.</summary>
static class FilmForms
{
    public static readonly Form<Footage> Length = new(
        SheetChecks.BadLength,
        Sentence.Of("sheet/bad-length.value.length"),
        Sentence.Of("sheet/bad-length.help.length"),
        FormJson.Text(
            "^ *[0-9]+ *([+] *[0-9]+|(ft|feet|foot) *[0-9]+ *(fr|frames?)|(fr|frames?)) *$|^ *[0-9]+([.][0-9]+)? "
                + "*(ft|feet|foot|m|met(re|er)s?|s|sec|seconds?) *$"
        ),
        ALength
    )
    {
        Objection = (text, context) => ParseLength(text, context).Slip,
        Rewrites = (text, context) => Rewritten.Length(text, context.Gauge),
    };

    /// <summary>A length that people count in frames: a fade, a take by its frames.</summary>
    public static readonly Form<Footage> Frames = Length with { Rewrites = (text, context) => Rewritten.Frames(text, context.Gauge) };

    /// <summary>A length in a box of the paper sheet, where whole feet or metres have no unit.</summary>
    public static readonly Form<SheetLength> Box = new(
        SheetChecks.BadLength,
        Sentence.Of("sheet/bad-length.value.box"),
        Sentence.Of("sheet/bad-length.help.box"),
        FormJson.Number(
            "^ *[0-9]+ *([+] *[0-9]+|(ft|feet|foot) *[0-9]+ *(fr|frames?)|(fr|frames?)) *$|^ *[0-9]+([.][0-9]+)? "
                + "*(ft|feet|foot|m|met(re|er)s?|s|sec|seconds?)? *$"
        ) with
        {
            Least = 0,
        },
        ABox
    )
    {
        Objection = (text, context) => ParseLength(text, context).Slip,
        Rewrites = (text, context) => Rewritten.Length(text, context.Gauge),
    };

    public static readonly Form<Speed> Speed = new(
        SheetChecks.BadSpeed,
        Sentence.Of("sheet/bad-speed.value.speed"),
        Sentence.Of("sheet/bad-speed.help.speed"),
        FormJson.Number("^ *[0-9]+([.][0-9]+)?( */ *[0-9]+([.][0-9]+)?)?( *(fps|fr/s))? *$") with
        {
            Least = 0,
            LeastItself = false,
        },
        ASpeed
    )
    {
        Objection = (text, _) => Film.Speed.Parse(text).Slip,
        Rewrites = (text, _) => Rewritten.Speed(text),
    };

    public static readonly Form<Stop> Stop = new(
        SheetChecks.BadStop,
        Sentence.Of("sheet/bad-stop.value.stop"),
        Sentence.Of("sheet/bad-stop.help.stop"),
        FormJson.Number("^.+$"),
        AStop
    )
    {
        Objection = (text, _) => Film.Stop.Parse(text).Slip,
        Rewrites = (text, _) => Rewritten.Number(text),
    };

    public static readonly Form<double> Stops = new(
        SheetChecks.BadStop,
        Sentence.Of("sheet/bad-stop.value.stops"),
        Sentence.Of("sheet/bad-stop.help.stops"),
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
        Objection = (text, _) => Film.Stops.Parse(text).Slip,
        Rewrites = (text, _) => Rewritten.Number(text),
    };

    public static readonly Form<double> StopsMore = new(
        SheetChecks.BadStop,
        Sentence.Of("sheet/bad-stop.value.stops-more"),
        Sentence.Of("sheet/bad-stop.help.stops-more"),
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
        Objection = (text, _) => Film.Stops.Parse(text).Slip,
        Rewrites = (text, _) => Rewritten.Number(text),
    };

    public static readonly Form<Distance> Distance = new(
        SheetChecks.BadDistance,
        Sentence.Of("sheet/bad-distance.value.distance"),
        Sentence.Of("sheet/bad-distance.help.distance"),
        FormJson.Text(
            "^ *(inf|infinity|∞) *$|^ *[0-9]+([.][0-9]+)? *(ft|feet|foot|m|cm|mm|in) *$|^ *[0-9]+([.][0-9]+)? *(ft|feet|foot) "
                + "*[0-9]+([.][0-9]+)? *in *$"
        ),
        ADistance
    )
    {
        Objection = (text, _) => Film.Distance.Parse(text).Slip,
        Rewrites = (text, _) => Rewritten.Distance(text),
    };

    public static readonly Form<Gauge> Gauge = new(
        SheetChecks.BadChoice,
        Sentence.Of("sheet/bad-choice.value.gauge"),
        Sentence.Of("sheet/bad-choice.help.gauge", ("names", string.Join(", ", Film.Gauge.All.Select(g => $"`{g.Name}`")))),
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

    // A bare number is whole until the production's units say of what.
    static bool ABox(string text, ReadingContext context, out SheetLength value)
    {
        var bare = FilmLength.Parse(text.Trim() + "ft").TryGet(out var number) && number.Unit == FilmLengthUnit.Feet;
        var read = ParseLength(text, context).TryGet(out var length);
        value = new SheetLength(bare ? number.Quantity : null, length);
        return bare || read;
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
