using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>The use of film by part and by day, ready to print.</summary>
static class UseLines
{
    /// <summary>By scene, and by lot and body where there is more than one to compare.</summary>
    public static IEnumerable<PartFacts> Parts(Books books, PaperFormat format)
    {
        (string Kind, ImmutableArray<UseOfPart> Parts, int Least)[] all =
        [
            ("scene", books.Stock.Scenes, 1),
            ("lot", books.Stock.ByLot, 2),
            ("body", books.Stock.Bodies, 2),
        ];
        return from kind in all
               where kind.Parts.Count(p => p.Name is not null) >= kind.Least
               select new PartFacts(
                   format.Words["use-by-" + kind.Kind],
                   format.Words[kind.Kind],
                   [.. kind.Parts.Where(p => p.Name is not null || p.Use.Tally.Exposed > Footage.Zero).Select(p => Line(p, books, format))],
                   kind.Kind == "scene" && HasRunTwice(books)
               );
    }

    static bool HasRunTwice(Books books) => books.Shoot.Counted.Any(r => r.Strip.Segments.Any(s => s.Layers.Length > 1));

    /// <summary>A line for each day, and the shoot to date.</summary>
    public static IEnumerable<DayLine> Days(Books books, PaperFormat format)
    {
        if (books.Stock.Days.IsEmpty)
        {
            yield break;
        }

        foreach (var day in books.Stock.Days)
        {
            var planned = books.Shoot.Production.Days.FirstOrDefault(d => d.On.Value == day.On);
            yield return Line(
                planned is null ? "–" : PaperFormat.Number(planned.Number.Value),
                format.Date(day.On),
                day.Use,
                Or(day.Loaded, books.Metric.Of(day).Loaded, format),
                Or(day.ShortEndsMade, books.Metric.Of(day).ShortEnds, format),
                format.LengthOrDash(day.OnHand),
                books,
                format
            ) with
            {
                Where = [.. new[] { planned?.Where?.Value, planned?.Note?.Value }.OfType<string>()],
            };
        }

        var made = new Footage(books.Stock.Days.Sum(d => d.ShortEndsMade.Frames));
        yield return Line(
            "",
            format.Words["to-date"],
            books.Stock.Use,
            Or(books.Shoot.Total.Loaded, books.Metric.Total.Loaded, format),
            Or(made, books.Metric.ShortEndsMade, format),
            format.LengthOrDash(books.Stock.OnHand),
            books,
            format
        ) with
        {
            Total = true,
        };
    }

    static string Or(Footage film, long centimetres, PaperFormat format) =>
        film == Footage.Zero ? PaperFormat.Dash : format.Account(film, centimetres);

    static DayLine Line(
        string day,
        string date,
        UseOfFilm use,
        string loaded,
        string shortEnds,
        string onHand,
        Books books,
        PaperFormat format
    ) =>
        new(
            day,
            date,
            [],
            PaperFormat.Number(use.Takes),
            loaded,
            TallyFacts.Of(use.Tally, books.Metric.Of(use), format),
            shortEnds,
            onHand,
            PaperFormat.Clock(use.ScreenTime),
            format.ToOne(use.ExposedToGood),
            Total: false
        );

    static PartLine Line(UseOfPart part, Books books, PaperFormat format) =>
        new(
            part.Name ?? format.Words["use-of-none"],
            TallyFacts.Of(part.Use.Tally, books.Metric.Of(part.Use), format),
            PaperFormat.Clock(part.Use.ScreenTime),
            format.ToOne(part.Use.ExposedToGood),
            part.Use.WasteRate is { } rate ? format.Percent(rate) : "–",
            PaperFormat.Number(part.Use.Takes),
            part.Use.TakesAShot is { } takes ? format.Decimals(takes.ToDouble()) : "–"
        );
}
