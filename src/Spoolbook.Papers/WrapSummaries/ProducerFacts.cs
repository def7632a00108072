using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.KitLists;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Forecasts;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>What a producer asks: the money, the film left, the shots and the kit.</summary>
/// <param name="Money">Spent, ordered, in a camera, still to come, and all of it.</param>
/// <param name="ToComeOf">What the money to come is worked out from; empty where none is.</param>
/// <param name="NotPriced">Work without a rate, which is in no sum; empty if there is none.</param>
/// <param name="Left">Film left to shoot, stock by stock.</param>
/// <param name="Got">Shots with a good take.</param>
/// <param name="ToGet">The shots still to get, by name; empty where there is no list or none is left.</param>
/// <param name="Kit">What of the kit is missing, a line each; one line where nothing is, none without a kit.</param>
/// <param name="KitMissing">Whether any of it is missing that nobody accepted.</param>
public sealed record ProducerFacts(
    ImmutableArray<Glance> Money,
    string ToComeOf,
    string NotPriced,
    ImmutableArray<Glance> Left,
    Glance Got,
    ImmutableArray<string> ToGet,
    ImmutableArray<string> Kit,
    bool KitMissing
)
{
    // Beyond that a list of descriptions no longer fits on the page.
    const int MostDescribed = 10;

    internal static ProducerFacts Of(Books books, KitFacts kit, PaperFormat format) =>
        new(
            [.. MoneyOf(books, format)],
            ToCome(books, format),
            books.Cost.IsPriced ? CostFacts.Of(books.Cost.Lines, books, format).Open : "",
            [.. books.Stock.Kinds.Select(k => LeftOf(k, books, format))],
            Shots(books.Coverage, format),
            [.. ToGetOf(books.Coverage, format)],
            kit.Groups.IsEmpty ? []
                : kit.Missing.IsEmpty ? [format.Words[books.Kit.IsOut ? "kit-not-back-yet" : "kit-all-back"]]
                : kit.Missing,
            kit.IsMissing
        );

    static IEnumerable<Glance> MoneyOf(Books books, PaperFormat format) =>
        Amounts(books).Select(a => new Glance(books.Cost.IsPriced ? format.Money(a.Amount) : format.Words["open"], format.Words[a.Key]));

    /// <summary>The amounts with the keys of their names; null is open. One of which there is nothing is not asked about.</summary>
    internal static IEnumerable<(string Key, decimal? Amount)> Amounts(Books books)
    {
        var (cost, end) = (books.Cost, books.ToEnd);
        yield return ("money-spent", cost.Spent);
        if (cost.Sendings.Any(s => s.SentOn is null))
        {
            yield return ("money-ordered", cost.OrderNotSent);
        }

        if (cost.At(CostStage.Committed).Any())
        {
            yield return ("money-committed", cost.TotalAt(CostStage.Committed));
        }

        yield return ("money-to-come", end.ToCome);
        yield return ("money-at-the-end", end.Total);
    }

    static string ToCome(Books books, PaperFormat format) =>
        books.ToEnd is { Film: { Frames: > 0 } film, Lab: { } lab, Stock: { } stock } end && books.Cost.IsPriced
            ? format.Words.Fill(
                stock > 0 ? "money-to-come-both"
                    : OrdersToBeSure(books.Forecast) ? "money-to-come-lab-order"
                    : "money-to-come-lab",
                ("film", format.LengthWithUnit(film)),
                ("lab", format.Money(lab)),
                ("so-far", format.Money(end.LabSoFar)),
                ("film-so-far", format.LengthWithUnit(end.FilmSoFar)),
                ("lacking", format.LengthWithUnit(end.Lacking ?? Footage.Zero)),
                ("stock", format.Money(stock))
            )
            : "";

    // Stock to be as sure as usual, beyond the average that the money goes by.
    static bool OrdersToBeSure(FilmForecast forecast) =>
        forecast.Figures.Any(f => f.Percent == FilmForecast.Usual && f.Orders.Any());

    static Glance LeftOf(StockKind kind, Books books, PaperFormat format) =>
        new(
            format.AccountWithUnit(kind.Left, books.Metric.Of(kind.Lots).Left),
            format.Words.Fill("left-of-stock", ("stock", kind.Name), ("units", Units(kind, format)))
        );

    // All that is in the figure. A can that was opened and canned again is no longer sealed.
    static string Units(StockKind kind, PaperFormat format)
    {
        List<string> parts =
        [
            .. kind.Unopened > kind.Recanned ? [format.Count(kind.Unopened - kind.Recanned, "sealed-unit")] : (string[])[],
            .. kind.Recanned > 0 ? [format.Count(kind.Recanned, "recanned-unit")] : (string[])[],
            .. kind.ShortEndCans > 0 ? [format.Count(kind.ShortEndCans, "short-end-can")] : (string[])[],
            .. kind.InCamera > Footage.Zero ? [format.Words["left-in-camera"]] : (string[])[],
        ];
        return parts.Count == 0 ? format.Count(0, "sealed-unit") : string.Join(", ", parts);
    }

    // What is got beside the list is no part of the list.
    static Glance Shots(CoverageBook coverage, PaperFormat format)
    {
        var beside = coverage.Listed.IsEmpty ? 0 : coverage.Unlisted.Count(s => s.IsGot);
        return new Glance(
            format.Words.Fill(
                "shots-got",
                ("got", PaperFormat.Number(coverage.Counted.Count(s => s.IsGot))),
                ("all", PaperFormat.Number(coverage.Counted.Count()))
            ),
            beside == 0
                ? format.Words["shots-with-good-take"]
                : format.Words.Fill("shots-with-good-take-beside", ("beside", PaperFormat.Number(beside)))
        );
    }

    static IEnumerable<string> ToGetOf(CoverageBook coverage, PaperFormat format)
    {
        var left = coverage.Left ?? [];
        return left.Length > MostDescribed
            ? [string.Join(", ", left.Select(s => s.Name))]
            : left.Select(s =>
                s.Name + (s.Planned?.What is { } what ? " " + what.Value : "") + (s.HasHeld ? " (" + format.Words["cover-held"] + ")" : "")
            );
    }
}
