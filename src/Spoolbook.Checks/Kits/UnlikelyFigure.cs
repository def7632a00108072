using System.Globalization;
using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Kits;

static class UnlikelyFigure
{
    // Sources have shutters of 72 to 270 degrees (B. Brown, Cinematography, 2nd ed. 2011).
    const int LeastAngle = 72;
    const int MostAngle = 270;

    // A trade's figure for a mark is a round one: three quarters open is half a stop, and exactly 0.42.
    const double MarkSlack = 0.34;

    // A prism takes 20 to 25 % of the light (common practice; I. Vásárhelyi, 1965, has 20 %). Twice that is a slip.
    static readonly Ratio _mostLoss = new(1, 2);

    // Wider than f/0.7 there is no lens, and no prime of the trade opens less than f/8 or closes beyond f/45 (common practice).
    static readonly (double Widest, double Dark, double Smallest) _ring = (0.69, 8.1, 45.5);

    // A prime focuses down to some twenty times its focal length, a long one to fifty (common practice); a wide one without
    // a ring that turns is sharp from a yard or so. Far beyond is a slip.
    const int MostFocals = 100;
    const int NearForAll = 1300;

    // A thin lens has no image nearer than four focal lengths from its subject, at life size (lens equation).
    const int FewestFocals = 4;

    // Half a third: a ring is engraved in full or half stops.
    const double OffTheSeries = 0.05;

    public static readonly RecordCheck Check = new("kit/unlikely-figure", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        context
            .Production.Bodies.SelectMany(b => OfBody(context, b))
            .Concat(context.Production.Lenses.SelectMany(l => OfLens(context, l)))
            .Concat(UnlikelyDial.Of(context))
            .Concat(UnlikelyFilter.Of(context));

    static IEnumerable<Finding> OfBody(Context context, Body body)
    {
        if (body.FinderLoss is { } loss && loss.Value > _mostLoss)
        {
            yield return Find(body.Name, loss.Place, "kit/unlikely-figure.message.finder", (loss.Value * 100).ToShortText(1));
        }

        if (body.ShutterAngle is { } angle && (angle.Value < LeastAngle || angle.Value > MostAngle))
        {
            yield return Find(body.Name, angle.Place, "kit/unlikely-figure.message.shutter", angle.Value.ToShortText(1));
        }

        if (body is { FullWind: { } wind, Takes: { } takes } && wind.Value > takes.Value)
        {
            yield return Find(body.Name, wind.Place, "kit/unlikely-figure.message.wind", context.Write(wind.Value));
        }

        var (slower, faster) = body.Speeds.Zip(body.Speeds.Skip(1)).FirstOrDefault(s => s.First.Value >= s.Second.Value);
        if (slower is not null)
        {
            yield return Find(body.Name, faster.Place, "kit/unlikely-figure.message.dial", faster.Value.ToString());
        }

        if (body is { LoadingSpeed: { } loading, Speeds.Length: > 0 } && !HasSpeed(body, loading.Value))
        {
            yield return Find(body.Name, loading.Place, "kit/unlikely-figure.message.loading", loading.Value.ToString());
        }

        foreach (var mark in body.ShutterMarks.Where(m => m.Stops is not null && m.Open.Value.Sign > 0))
        {
            var cost = -Stops.FromFraction(mark.Open.Value.ToDouble());
            if (Math.Abs(mark.Stops!.Value - cost) > MarkSlack)
            {
                yield return Find(
                    body.Name,
                    mark.Stops.Place,
                    "kit/unlikely-figure.message.mark",
                    cost.ToString("0.#", CultureInfo.InvariantCulture)
                );
            }
        }
    }

    static IEnumerable<Finding> OfLens(Context context, Lens lens)
    {
        if (lens is { Widest: { } widest, Smallest: { } smallest } && widest.Value.Av > smallest.Value.Av)
        {
            yield return Find(lens.Name, widest.Place, "kit/unlikely-figure.message.stops", widest.Value.ToString());
        }
        else if (lens.Widest is { } open && (open.Value.EngravedNumber < _ring.Widest || open.Value.EngravedNumber > _ring.Dark))
        {
            yield return Find(lens.Name, open.Place, "kit/unlikely-figure.message.wide", open.Value.ToString());
        }

        if (lens.Smallest is { } closed && closed.Value.EngravedNumber > _ring.Smallest)
        {
            yield return Find(lens.Name, closed.Place, "kit/unlikely-figure.message.small", closed.Value.ToString());
        }
        else if (lens.Smallest is { } end && Math.Abs((end.Value.Av * 2) - Math.Round(end.Value.Av * 2)) > 2 * OffTheSeries)
        {
            yield return Find(lens.Name, end.Place, "kit/unlikely-figure.message.ring", end.Value.ToString());
        }

        if (
            lens is { Nearest: { Value.IsInfinity: false } nearest, Focal: { } length }
            && (
                (nearest.Value.Millimetres > length.Value * MostFocals && nearest.Value.Millimetres > NearForAll)
                || nearest.Value.Millimetres < length.Value * FewestFocals
            )
        )
        {
            var message =
                nearest.Value.Millimetres > length.Value * MostFocals
                    ? "kit/unlikely-figure.message.nearest"
                    : "kit/unlikely-figure.message.too-near";
            yield return Find(lens.Name, nearest.Place, message, context.Write(nearest.Value).ToString());
        }

        if (lens.Focal is { } focal && NamedFocal(lens.Name.Value) is { } named && named != focal.Value)
        {
            yield return Find(lens.Name, focal.Place, "kit/unlikely-figure.message.focal", focal.Value.ToShortText(1));
        }
    }

    static bool HasSpeed(Body body, Speed speed) =>
        body.Speeds.Any(s => s.Value == speed)
        || (
            speed >= (body.Slowest?.Value ?? body.Speeds.Min(s => s.Value))
            && speed <= (body.Fastest?.Value ?? body.Speeds.Max(s => s.Value))
        );

    // A name such as `25mm`, and no other.
    static Ratio? NamedFocal(string name) =>
        name.EndsWith("mm", StringComparison.OrdinalIgnoreCase)
        && decimal.TryParse(name[..^2].Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var millimetres)
            ? Ratio.FromDecimal(millimetres)
            : null;

    /// <summary>The finding of a piece's figure.</summary>
    internal static Finding Find(Located<string> piece, Place place, string message, string figure) =>
        Find(piece, place, message, Sentence.Plain(figure));

    /// <inheritdoc cref="Find(Located{string}, Place, string, string)"/>
    internal static Finding Find(Located<string> piece, Place place, string message, Sentence figure) =>
        Check.At(place, Sentence.Of(message, ("piece", piece.Value), ("figure", figure))) with
        {
            Piece = piece.Value,
            Others = [new Related(piece.Place, Sentence.Of("kit/unlikely-figure.other"))],
            Advice = Sentence.Of("kit/unlikely-figure.help"),
        };
}
