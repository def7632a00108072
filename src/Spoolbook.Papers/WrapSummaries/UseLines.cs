using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;

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
               let parts = kind.Parts.Where(p => p.Name is not null || p.Use.Tally.Exposed > Footage.Zero).ToList()
               where parts.Count >= kind.Least && (kind.Kind != "scene" || parts.Exists(p => p.Name is not null))
               select new PartFacts(
                   format.Words["use-by-" + kind.Kind],
                   format.Words[kind.Kind],
                   [.. parts.Select(p => Line(p, kind.Kind, books, format))],
                   kind.Kind == "scene" && HasRunTwice(books)
               );
    }

    // Takes that were shot over another part's film, which has all the frames, exposed none that count with them.
    static TallyFacts TallyOf(UseOfFilm use, Books books, PaperFormat format)
    {
        var tally = TallyFacts.Of(use.Tally, books.Metric.Of(use), format);
        return use.Takes > 0 && use.Tally.Exposed == Footage.Zero ? tally with { Exposed = format.Words["use-shared"] } : tally;
    }

    static bool HasRunTwice(Books books) => books.Shoot.Counted.Any(r => r.Strip.Segments.Any(s => s.Layers.Length > 1));

    /// <summary>A line for each day, and the shoot to date.</summary>
    public static IEnumerable<DayLine> Days(Books books, PaperFormat format)
    {
        if (books.Stock.Days.IsEmpty)
        {
            yield break;
        }

        foreach (var line in books.Stock.Days.SelectMany(d => d.Units.Length > 1 ? Units(d, books, format) : [Day(d, books, format)]))
        {
            yield return line;
        }

        var made = new Footage(books.Stock.Days.Sum(d => d.ShortEndsMade.Frames));
        yield return Line(
            "",
            format.Words["to-date"],
            books.Stock.Use,
            Or(books.Shoot.Total.Loaded, books.Metric.Total.Loaded, format),
            Or(made, books.Metric.ShortEndsMade, format),
            Or(books.Stock.OnHand, books.Metric.Stock.OnHand, format),
            books,
            format
        ) with
        {
            Total = true,
        };
    }

    static DayLine Day(StockDay day, Books books, PaperFormat format)
    {
        var listed = ListedOn(day, books);
        return Line(
            NumbersOf(listed),
            format.Date(day.On),
            day.Use,
            Or(day.Loaded, books.Metric.Of(day).Loaded, format),
            Or(day.ShortEndsMade, books.Metric.Of(day).ShortEnds, format),
            Or(day.OnHand, books.Metric.Of(day).OnHand, format),
            books,
            format
        ) with
        {
            Where = [.. listed.SelectMany(d => WhereOf(d, several: listed.Count > 1))],
        };
    }

    // What the days are about is said once; the film left in the evening is everybody's.
    static IEnumerable<DayLine> Units(StockDay day, Books books, PaperFormat format)
    {
        var listed = ListedOn(day, books);
        return day.Units.Select(
            (unit, i) =>
                Line(
                    i == 0 ? NumbersOf(listed) : "",
                    format.Words.Fill("day-of-camera", ("day", format.Date(day.On)), ("body", unit.Body ?? format.Words["not-stated"])),
                    unit.Use,
                    Or(unit.Loaded, books.Metric.Of(unit).Loaded, format),
                    Or(unit.ShortEndsMade, books.Metric.Of(unit).ShortEnds, format),
                    i == day.Units.Length - 1 ? Or(day.OnHand, books.Metric.Of(day).OnHand, format) : "",
                    books,
                    format
                ) with
                {
                    Where = i == 0 ? [.. listed.SelectMany(d => WhereOf(d, several: true))] : [],
                }
        );
    }

    static List<ShootingDay> ListedOn(StockDay day, Books books) => [.. books.Shoot.Production.Days.Where(d => d.On.Value == day.On)];

    static string NumbersOf(List<ShootingDay> listed) =>
        listed.Count == 0 ? PaperFormat.Dash : string.Join(", ", listed.Select(d => PaperFormat.Number(d.Number.Value)));

    // Two units may shoot on one date, each on a day of its own.
    static IEnumerable<string> WhereOf(ShootingDay day, bool several) =>
        new[] { day.Where?.Value, day.Note?.Value }
            .OfType<string>()
            .Select((line, i) => several && i == 0 ? PaperFormat.Number(day.Number.Value) + ": " + line : line);

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

    static PartLine Line(UseOfPart part, string kind, Books books, PaperFormat format) =>
        new(
            part.Name ?? format.Words[kind == "scene" ? "use-of-none" : "use-of-unknown"],
            TallyOf(part.Use, books, format),
            PaperFormat.Clock(part.Use.ScreenTime),
            format.ToOne(part.Use.ExposedToGood),
            part.Use.WasteRate is { } rate ? format.Percent(rate) : "–",
            PaperFormat.Number(part.Use.Takes),
            part.Use.TakesAShot is { } takes ? format.Decimals(takes.ToDouble()) : "–"
        );
}
