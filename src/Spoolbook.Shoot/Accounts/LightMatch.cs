using Spoolbook.Film.Exposures;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>Which stock suits which light, and with which filter.</summary>
public static class LightMatch
{
    /// <summary>
    /// Mireds that film, filter and light may be apart, unless the production sets another figure: half of the step
    /// from daylight to tungsten.
    /// </summary>
    public const double UsualMireds = 65;

    // The shift between the sheet's two words for light, and between the stocks made for them.
    static readonly double _fromDaylightToTungsten = LightFilter.ShiftBetween(5500, 3200);

    /// <summary>The shift, in mireds, that a filter must give: above zero it warms; zero where none is wanted.</summary>
    public static double Wanted(ColourBalance stock, SubjectLight light) =>
        (stock, light) switch
        {
            (ColourBalance.Tungsten, SubjectLight.Daylight) => _fromDaylightToTungsten,
            (ColourBalance.Daylight, SubjectLight.Tungsten) => -_fromDaylightToTungsten,
            _ => 0,
        };

    /// <summary>A filter's shift in mireds; null where neither the kit nor the makers' tables have it.</summary>
    /// <param name="filter">The filter of the kit; null where the kit has none of that name.</param>
    public static double? ShiftOf(Filter? filter, string name) =>
        filter?.Mireds?.Value ?? LightFilter.Named(name)?.Mireds ?? (name.StartsWith("ND", StringComparison.OrdinalIgnoreCase) ? 0 : null);

    /// <summary>
    /// The filter that a stock wants in daylight, and the stops that it takes: the lightest of the kit that turns it,
    /// else the 85; null for a stock that wants none.
    /// </summary>
    public static (string Name, double Stops)? DaylightFilter(Production production, ColourBalance stock)
    {
        var wanted = Wanted(stock, SubjectLight.Daylight);
        if (wanted == 0)
        {
            return null;
        }

        var kit = production
            .Filters.Where(f => ShiftOf(f, f.Name.Value) is { } shift && Math.Abs(shift - wanted) <= UsualMireds)
            .Select(f => (Name: f.Name.Value, Stops: f.Stops?.Value ?? -(LightFilter.Named(f.Name.Value)?.Stops ?? 0)))
            .OrderBy(f => f.Stops)
            .ToList();
        return kit.Count > 0 ? kit[0] : ("85", -LightFilter.Named("85")!.Stops);
    }

    /// <summary>
    /// Whether a stock may serve in a light: it is made for it, or the kit has the filter. Black and white serves in
    /// any light, and any stock where the light is mixed or not written.
    /// </summary>
    /// <param name="most">Mireds that film, filter and light may be apart.</param>
    public static bool Serves(Production production, ColourBalance stock, SubjectLight? light, double most) =>
        stock == ColourBalance.None
        || light is not { } known
        || Wanted(stock, known) is var wanted && wanted == 0
        || production.Filters.Any(f => Math.Abs(ShiftOf(f, f.Name.Value) - wanted ?? double.MaxValue) <= most);
}
