using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>A length in a box of the paper sheet: a bare number in the production's units (<c>41</c>), or a length with its unit.</summary>
/// <param name="Bare">The bare number, in feet or metres; 0 or more; null where a unit was written.</param>
/// <param name="WithUnit">The length as written, where it has a unit.</param>
public sealed record SheetLength(Ratio? Bare, FilmLength WithUnit)
{
    // As many decimals as anybody writes on paper.
    const int MostDecimals = 3;

    /// <summary>The length, with its unit.</summary>
    public FilmLength In(Production production) =>
        Bare is not { } number ? WithUnit
        : production.Units == LengthUnit.Metres ? FilmLength.OfMetres(number)
        : FilmLength.OfFeet(number);

    /// <summary>The length in frames, which need not be whole: <c>9.5m</c> is between two.</summary>
    public Ratio FramesIn(Production production)
    {
        var length = In(production);
        return UnitOf(length, production) is { } unit ? length.Quantity * unit : length.In(production.Gauge, production.ProjectedAt).Frames;
    }

    /// <summary>
    /// The last place written, in frames: a foot for <c>41</c>, a tenth of one for <c>41.5ft</c>; 0 where frames are written,
    /// since those are counted.
    /// </summary>
    public Ratio LastPlaceIn(Production production)
    {
        var length = In(production);
        if (UnitOf(length, production) is not { } unit)
        {
            return Ratio.Zero;
        }

        var (quantity, decimals) = (length.Quantity, 0);
        while (!quantity.IsWhole && decimals < MostDecimals)
        {
            (quantity, unit, decimals) = (quantity * 10, unit / 10, decimals + 1);
        }

        return unit;
    }

    // Frames of one foot, metre or second; null where frames are written.
    static Ratio? UnitOf(FilmLength length, Production production) =>
        length.Unit switch
        {
            FilmLengthUnit.Feet => production.Gauge.FramesPerFoot,
            FilmLengthUnit.Metres => production.Gauge.FramesPerMetre,
            FilmLengthUnit.Seconds => production.ProjectedAt.FramesPerSecond,
            _ => null,
        };
}
