using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.Facts;

/// <summary>The use of film by part and by day, written out.</summary>
static class UseLines
{
    /// <summary>By scene, and by lot and body where there is more than one to compare.</summary>
    public static IEnumerable<PartFacts> Parts(Books books, Wording say)
    {
        (string Kind, ImmutableArray<UseOfPart> Parts, int Least)[] all = [("scene", books.Stock.Scenes, 1), ("lot", books.Stock.ByLot, 2), ("body", books.Stock.Bodies, 2)];
        return from kind in all
               where kind.Parts.Count(p => p.Name is not null) >= kind.Least
               select new PartFacts(say.Words["use-by-" + kind.Kind], say.Words[kind.Kind], [.. kind.Parts.Where(p => p.Name is not null || p.Use.Tally.Exposed > Footage.Zero).Select(p => Line(p, say))], kind.Kind == "scene" && HasRunTwice(books));
    }

    static bool HasRunTwice(Books books) => books.Shoot.Counted.Any(r => r.Strip.Segments.Any(s => s.Layers.Length > 1));

    /// <summary>A line for each day, and the shoot to date.</summary>
    public static IEnumerable<DayLine> Days(Books books, Wording say)
    {
        if (books.Stock.Days.IsEmpty)
        {
            yield break;
        }

        foreach (var day in books.Stock.Days)
        {
            var planned = books.Shoot.Production.Days.FirstOrDefault(d => d.On.Value == day.On);
            yield return Line(planned is null ? "–" : Wording.Number(planned.Number.Value), say.Date(day.On), day.Use, day.Loaded, day.ShortEndsMade, day.OnHand, say) with
            {
                Where = [.. new[] { planned?.Where?.Value, planned?.Note?.Value }.OfType<string>()],
            };
        }

        var made = new Footage(books.Stock.Days.Sum(d => d.ShortEndsMade.Frames));
        yield return Line("", say.Words["to-date"], books.Stock.Use, books.Shoot.Total.Loaded, made, books.Stock.OnHand, say) with { Total = true };
    }

    static DayLine Line(string day, string date, UseOfFilm use, Footage loaded, Footage shortEnds, Footage onHand, Wording say) => new(
        day,
        date,
        [],
        Wording.Number(use.Takes),
        say.LengthOrDash(loaded),
        TallyFacts.Of(use.Tally, say),
        say.LengthOrDash(shortEnds),
        say.LengthOrDash(onHand),
        Wording.Clock(use.ScreenTime),
        say.ToOne(use.ExposedToGood),
        Total: false);

    static PartLine Line(UseOfPart part, Wording say) => new(
        part.Name ?? say.Words["use-of-none"],
        TallyFacts.Of(part.Use.Tally, say),
        Wording.Clock(part.Use.ScreenTime),
        say.ToOne(part.Use.ExposedToGood),
        part.Use.WasteRate is { } rate ? say.Percent(rate) : "–",
        Wording.Number(part.Use.Takes),
        part.Use.TakesAShot is { } takes ? say.Decimals(takes.ToDouble()) : "–");
}
