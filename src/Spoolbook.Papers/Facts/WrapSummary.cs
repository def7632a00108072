using System.Collections.Immutable;
using Spoolbook.Papers.Pictures.Charts;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Facts;

/// <summary>Gathers the facts of the wrap summary.</summary>
internal static class WrapSummary
{
    public static WrapSummaryFacts Of(Books books, ImmutableArray<Finding> findings, ImmutableArray<WaiverFacts> waivers, ImmutableArray<PaperLink> papers, PaperHead head, Wording say)
    {
        var book = books.Shoot;
        var production = book.Production;
        var coverage = CoverageLine.Of(books.Coverage, say);
        return new WrapSummaryFacts(head)
        {
            People = [.. production.People.Select(p => new PersonFacts(p.FullName.Value, p.Role?.Value ?? ""))],
            Glances = [.. Glances(books, say)],
            Tally = TallyFacts.Of(book.Total, say),
            Rolls = [.. book.Rolls.Select(r => Line(r, production, say))],
            Days = [.. UseLines.Days(books, say)],
            Coverage = coverage,
            Described = coverage.Any(c => c.What.Length > 0),
            CoverageSummary = say.Words.Fill("cover-summary", ("got", Wording.Number(coverage.Count(c => c.Got))), ("all", Wording.Number(coverage.Length))),
            Stock = [.. books.Stock.Lots.Select(l => Line(l, say))],
            Forecast = ForecastFacts.Of(books.Forecast, say),
            StockChart = ChartFacts.Of(say.Words[books.Forecast.Days.IsEmpty ? "chart-stock-caption-past" : "chart-stock-caption"], w => StockChart.Draw(books, say, w)),
            AccountChart = ChartFacts.Of(say.Words["chart-account-caption"], w => AccountChart.Draw(books, say, w)),
            RatioChart = ChartFacts.Of(say.Words["chart-ratio-caption"], w => RatioChart.Draw(books, say, w)),
            StockLog = [.. books.Stock.Moves.Select(m => Line(m, say))],
            Bought = CostFacts.Of(books.Cost.At(CostStage.Bought), say),
            Ordered = CostFacts.Of(books.Cost.Order, say),
            CostToDate = say.Money(books.Cost.IsPriced ? books.Cost.ToDate : null),
            CostCommitted = books.Cost.At(CostStage.Committed).Any() ? say.Money(books.Cost.TotalAt(CostStage.Committed)) : "",
            CostToEnd = books.ToEnd.Film is null || !books.Cost.IsPriced ? "" : say.Money(books.ToEnd.Total),
            CostToEndFilm = books.ToEnd.Film is { } film ? say.LengthWithUnit(film) : "",
            Parts = [.. UseLines.Parts(books, say)],
            Findings = FindingFacts.Of(findings, say),
            Waivers = waivers,
            Kit = KitFacts.Of(books.Kit, say),
            Legend = new Pages.Markup(Pictures.StripPicture.DrawLegend(book.Rolls, say)),
            PhoneLegend = new Pages.Markup(Pictures.StripPicture.DrawLegend(book.Rolls, say, Pictures.PictureWidth.Narrow)),
            Strips = [.. book.Rolls.Select(r => StripOf(r, say))],
            Papers = papers,
            LengthUnit = say.LengthUnitName,
        };
    }

    static IEnumerable<Glance> Glances(Books books, Wording say)
    {
        var book = books.Shoot;
        var total = book.Total;
        yield return new Glance(Wording.Number(book.Counted.Count()), say.Words["rolls"]);
        yield return new Glance(Wording.Number(book.Counted.Sum(r => r.Layers.Length)), say.Words["takes"]);
        yield return new Glance(say.LengthWithUnit(total.Exposed), say.Words["glance-exposed"]);
        yield return new Glance(say.LengthWithUnit(total.Good), say.Words["glance-good"]);
        yield return new Glance(Wording.Clock(books.Stock.Use.ScreenTime), say.Words["glance-screen"]);
        yield return new Glance(say.ToOne(books.Stock.Use.ExposedToGood), say.Words["exposed-to-good"]);
        yield return new Glance(say.LengthWithUnit(books.Stock.Left), say.Words["glance-left"]);
    }

    static RollLine Line(RollBook roll, Production production, Wording say)
    {
        var work = roll.LabWork;
        return new RollLine(
            roll.Roll.Name.Value,
            production.LotOf(roll.Roll)?.Stock.Value ?? "–",
            Wording.Number(roll.Layers.Length),
            TallyFacts.Of(roll.Tally, say),
            work.Process ?? say.Words["not-stated"],
            work.Push == 0 ? "–" : say.Stops(work.Push),
            PaperNames.CameraReport(roll.Roll) + ".html",
            roll.Roll.IsPractice);
    }

    static StockLine Line(StockLotBook lot, Wording say) => new(
        lot.Lot.Name.Value,
        lot.Lot.Stock.Value,
        Wording.Number(lot.UnitsReceived + lot.UnitsCame),
        Wording.Number(lot.UnitsLoaded + lot.UnitsPractised),
        Wording.Number(lot.UnitsSentAway + lot.UnitsLost),
        Wording.Number(lot.UnitsUnopened),
        say.Length(lot.OnHand),
        lot.ShortEndCans == 0 ? "–" : Wording.Number(lot.ShortEndCans) + ": " + say.Length(lot.ShortEnds),
        lot.Lot.Expires is { } expires ? say.Date(expires.Value) : "–",
        lot.IsPractice);

    static StockMoveLine Line(StockMove move, Wording say) => new(
        say.Date(move.On),
        move.With is { } with ? say.Words.Fill("stock-" + move.Entry.Word + "-with", ("with", with)) : say.Words["stock-" + move.Entry.Word],
        move.ShortEndOf is { } parent
            ? say.Words.Fill("short-end-of-roll", ("roll", parent.Name.Value))
            : say.Words.Fill("unit-of-lot", ("unit", Wording.Number(move.Unit ?? 0)), ("lot", move.Lot.Name.Value)),
        say.Length(move.Film),
        string.Join("; ", new[] { move.Entry.Note?.Value, move.Counts ? null : say.Words["stock-not-counted"] }.OfType<string>()),
        move.Counts);

    static StripFacts StripOf(RollBook roll, Wording say) => new(
        roll.Roll.Name.Value,
        PaperNames.StripOf(roll.Roll),
        PaperNames.CameraReport(roll.Roll) + ".html",
        say.Words.Fill("strip-caption", ("roll", roll.Roll.Name.Value), ("exposed", say.Length(roll.Tally.Exposed)), ("loaded", say.LengthWithUnit(roll.Strip.Loaded))),
        new Pages.Markup(Pictures.StripPicture.Draw(roll, say, legend: false)),
        new Pages.Markup(Pictures.StripPicture.Draw(roll, say, Pictures.PictureWidth.Narrow, legend: false)));
}
