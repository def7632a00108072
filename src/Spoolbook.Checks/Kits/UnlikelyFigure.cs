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

    public static readonly RecordCheck Check = new("kit/unlikely-figure", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        context.Production.Bodies.SelectMany(b => OfBody(context, b)).Concat(context.Production.Lenses.SelectMany(OfLens));

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

    static IEnumerable<Finding> OfLens(Lens lens)
    {
        if (lens is { Widest: { } widest, Smallest: { } smallest } && widest.Value.Av > smallest.Value.Av)
        {
            yield return Find(lens.Name, widest.Place, "kit/unlikely-figure.message.stops", widest.Value.ToString());
        }

        if (lens.Focal is { } focal && NamedFocal(lens.Name.Value) is { } named && named != focal.Value)
        {
            yield return Find(lens.Name, focal.Place, "kit/unlikely-figure.message.focal", focal.Value.ToShortText(1));
        }
    }

    // A name such as `25mm`, and no other.
    static Ratio? NamedFocal(string name) =>
        name.EndsWith("mm", StringComparison.OrdinalIgnoreCase)
        && decimal.TryParse(name[..^2].Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var millimetres)
            ? Ratio.FromDecimal(millimetres)
            : null;

    static Finding Find(Located<string> piece, Place place, string message, string figure) =>
        Check.At(place, Sentence.Of(message, ("piece", piece.Value), ("figure", figure))) with
        {
            Piece = piece.Value,
            Others = [new Related(piece.Place, Sentence.Of("kit/unlikely-figure.other"))],
            Advice = Sentence.Of("kit/unlikely-figure.help"),
        };
}
