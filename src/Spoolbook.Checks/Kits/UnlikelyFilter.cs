using System.Globalization;
using System.Text.RegularExpressions;
using Spoolbook.Checks.Running;
using Spoolbook.Film.Exposures;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Kits;

/// <summary>Filters whose figures are not those of their names.</summary>
static partial class UnlikelyFilter
{
    // Makers differ by a third of a stop.
    const double MostStops = 0.4;

    // The makers' tables differ by a few mireds; the next filter of the row is nine away or more.
    const double MostMireds = 8;

    // A density of 0.3 halves the light (ISO 5-1: density is the logarithm of the opacity).
    static readonly double _densityOfAStop = Math.Log10(2);

    public static IEnumerable<Finding> Of(Context context)
    {
        foreach (var filter in context.Production.Filters)
        {
            var name = filter.Name.Value;
            if (
                filter.Stops is { } stops
                && StopsOf(name) is { Length: > 0 } named
                && named.All(n => Math.Abs(n - stops.Value) > MostStops)
            )
            {
                yield return UnlikelyFigure.Find(
                    filter.Name,
                    stops.Place,
                    "kit/unlikely-figure.message.filter",
                    Context.Stops(Math.Round(named[0] * 3) / 3)
                );
            }

            if (filter.Mireds is { } mireds && MiredsOf(name) is { } shift && Math.Abs(shift - mireds.Value) > MostMireds)
            {
                yield return UnlikelyFigure.Find(
                    filter.Name,
                    mireds.Place,
                    "kit/unlikely-figure.message.mireds",
                    shift.ToString("0", CultureInfo.InvariantCulture)
                );
            }
        }
    }

    // ND3 and ND 0.3 are densities; ND2, ND4 and ND8 are factors as often.
    static double[] StopsOf(string name)
    {
        if (LightFilter.Named(name) is { } light)
        {
            return [-light.Stops];
        }

        if (Neutral().Match(name) is not { Success: true } match)
        {
            return [];
        }

        var figure = double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture);
        var density = match.Groups[1].Value.Contains('.', StringComparison.Ordinal) ? figure : figure / 10;
        return figure >= 2 ? [density / _densityOfAStop, Math.Log2(figure)] : [density / _densityOfAStop];
    }

    static double? MiredsOf(string name) => LightFilter.Named(name)?.Mireds ?? (Neutral().IsMatch(name) ? 0 : null);

    [GeneratedRegex(@"^ND ?(\d+(?:\.\d+)?)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Neutral();
}
