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
               select new PartFacts(say.Words["use-by-" + kind.Kind], say.Words[kind.Kind], [.. kind.Parts.Where(p => p.Name is not null || p.Use.Tally.Exposed > Footage.Zero).Select(p => Line(p, say))]);
    }

    /// <summary>A line for each day, and the shoot to date.</summary>
    public static IEnumerable<FilmDayLine> Days(Books books, Wording say)
    {
        if (books.Stock.Days.IsEmpty)
        {
            yield break;
        }

        foreach (var day in books.Stock.Days)
        {
            yield return new FilmDayLine(say.Date(day.On), say.LengthOrDash(day.Loaded), TallyFacts.Of(day.Use.Tally, say), say.LengthOrDash(day.ShortEndsMade), say.LengthOrDash(day.OnHand), Wording.Clock(day.Use.ScreenTime), say.ToOne(day.Use.ExposedToGood), Total: false);
        }

        var use = books.Stock.Use;
        yield return new FilmDayLine(
            say.Words["to-date"],
            say.LengthOrDash(books.Shoot.Total.Loaded),
            TallyFacts.Of(use.Tally, say),
            say.LengthOrDash(new Footage(books.Stock.Days.Sum(d => d.ShortEndsMade.Frames))),
            say.LengthOrDash(books.Stock.OnHand),
            Wording.Clock(use.ScreenTime),
            say.ToOne(use.ExposedToGood),
            Total: true);
    }

    static PartLine Line(UseOfPart part, Wording say) => new(
        part.Name ?? say.Words["use-of-none"],
        TallyFacts.Of(part.Use.Tally, say),
        Wording.Clock(part.Use.ScreenTime),
        say.ToOne(part.Use.ExposedToGood),
        part.Use.WasteRate is { } rate ? say.Percent(rate) : "–",
        Wording.Number(part.Use.Takes),
        part.Use.TakesAShot is { } takes ? say.Decimals(takes.ToDouble()) : "–");
}
