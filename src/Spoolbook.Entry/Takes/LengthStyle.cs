using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Entry.Takes;

/// <summary>Writes lengths in the style of a roll's other takes, and always exactly.</summary>
sealed class LengthStyle(Production production, IEnumerable<string> others)
{
    readonly FilmLengthUnit _usual = Usual(production, others);

    /// <param name="like">The length it replaces, whose unit it takes.</param>
    public string Write(Footage film, Speed speed, string? like = null)
    {
        var unit = like is not null && FilmLength.Parse(like).TryGet(out var written) ? written.Unit : _usual;
        foreach (var text in (string[])[Write(film, unit, speed), film.FeetAndFrames(production.Gauge)])
        {
            if (FilmLength.Parse(text, production.Gauge).TryGet(out var read) && read.In(production.Gauge, speed) == film)
            {
                return text;
            }
        }

        return FilmLength.OfFrames(film.Frames).ToString();
    }

    string Write(Footage film, FilmLengthUnit unit, Speed speed) =>
        unit switch
        {
            FilmLengthUnit.Frames => FilmLength.OfFrames(film.Frames).ToString(),
            FilmLengthUnit.Feet => Shortest(film, film.Feet(production.Gauge), FilmLength.OfFeet),
            FilmLengthUnit.Metres => Shortest(film, film.Metres(production.Gauge), FilmLength.OfMetres),
            FilmLengthUnit.Seconds => FilmLength.OfSeconds(film.Seconds(speed)).ToString(),
            _ => film.FeetAndFrames(production.Gauge),
        };

    // The fewest decimals that still give the exact frame.
    string Shortest(Footage film, Ratio quantity, Func<Ratio, FilmLength> of)
    {
        for (var places = 0; places < 5; places++)
        {
            var rounded = new Ratio((quantity * Power(places)).Round(), Power(places).Numerator);
            if (of(rounded).In(production.Gauge, Speed.Normal) == film)
            {
                return of(rounded).ToString();
            }
        }

        return of(quantity).ToString();
    }

    static Ratio Power(int places) => Enumerable.Repeat((Ratio)10, places).Aggregate(Ratio.One, (a, b) => a * b);

    static FilmLengthUnit Usual(Production production, IEnumerable<string> others)
    {
        var units =
            from text in others
            let parsed = FilmLength.Parse(text)
            where parsed.Succeeded && !parsed.Value.IsTime
            group text by parsed.Value.Unit into same
            orderby same.Count() descending
            select (FilmLengthUnit?)same.Key;
        return units.FirstOrDefault() ?? (production.Units == LengthUnit.Metres ? FilmLengthUnit.Metres : FilmLengthUnit.FeetAndFrames);
    }
}
