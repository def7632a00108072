using Spoolbook.Film;
using Spoolbook.Papers.CameraReports;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Jobs;
using Spoolbook.Papers.KitLists;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Pictures;
using Spoolbook.Papers.Wording;
using Spoolbook.Papers.WrapSummaries.Charts;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>The wrap summary.</summary>
internal sealed class WrapSummaryPaper : IPaper
{
    /// <summary>Its name, without an ending.</summary>
    public const string Name = "wrap-summary";

    public IEnumerable<PaperJob> Jobs(PaperSource source)
    {
        yield return new PaperJob(Name, "wrap-summary.html", source.Words["wrap-summary"], links => Of(source, links, StripSize.Low));
    }

    /// <summary>Its facts, which the index shows too.</summary>
    public static WrapSummaryFacts Of(PaperSource source, PaperLinks links, StripSize strips)
    {
        var (books, book, production, format) = (source.Books, source.Shoot, source.Production, source.Format);
        var coverage = CoverageLine.Of(books.Coverage, format);
        var described = coverage.Any(c => c.What.Length > 0);
        var kit = KitFacts.Of(books.Kit, format, source.Waived);
        var gutter = StripPicture.GutterOf(book.Rolls, format);
        return new WrapSummaryFacts(source.Head)
        {
            Producer = ProducerFacts.Of(books, kit, format),
            People = [.. production.People.Select(p => new PersonFacts(p.FullName.Value, p.Role?.Value ?? ""))],
            Glances = [.. Glances(books, format)],
            Tally = TallyFacts.Of(book.Total, books.Metric.Total, format),
            Rolls = [.. book.Rolls.Select(r => Line(r, books, format))],
            HasPractice = book.Rolls.Any(r => r.Roll.IsPractice),
            ShortEnd = Left(book.Counted.Where(r => !IsInCamera(r)), books, format),
            InCamera = book.Rolls.Any(IsInCamera) ? Left(book.Counted.Where(IsInCamera), books, format) : "",
            Days = [.. UseLines.Days(books, format)],
            CoverageRows = CoverageLine.InColumns(coverage, described),
            Described = described,
            Stock = [.. books.Stock.Lots.Select(l => Line(l, books.Metric.Of(l), format))],
            ShortEnds = [.. books.Stock.ShortEnds.Select(e => Line(e, books, format))],
            Forecast = ForecastFacts.Of(books.Forecast, format, books.Coverage.Dropped.Select(s => s.Name)),
            StockChart = ChartFacts.Of(StockCaption(books, format), w => StockChart.Draw(books, format, w)),
            AccountChart = ChartFacts.Of("", w => AccountChart.Draw(books, format, w)),
            AccountOf = BridgeWords.Origins(books.Bridge, format),
            RatioChart = ChartFacts.Of(format.Words["chart-ratio-caption"], w => RatioChart.Draw(books, format, w)),
            StockLog = [.. books.Stock.Moves.Select(m => Line(m, books, format))],
            Bought = CostFacts.Of(books.Cost.At(CostStage.Bought), books, format),
            Ordered = CostFacts.Of(books.Cost.Order, books, format),
            Committed = CostFacts.Of(books.Cost.At(CostStage.Committed), books, format),
            Parts = [.. UseLines.Parts(books, format)],
            Findings = FindingFacts.Of(source.Findings, book.Rolls, format),
            Waivers = source.Waivers,
            NotLookedAt = [.. source.NotLookedAt.Select(n => n.Description.In(format.Sentences))],
            Rules = RuleFacts.Of(source.Rules, format),
            Kit = kit,
            Legend = new Markup(StripPicture.DrawLegend(book.Rolls, format)),
            PhoneLegend = new Markup(StripPicture.DrawLegend(book.Rolls, format, PictureWidth.Narrow)),
            Strips =
                strips == StripSize.None
                    ? []
                    : [.. book.Rolls.Select(r => StripOf(r, strips == StripSize.Low ? gutter : null, books, format))],
            Papers = links.Papers,
            Reports = links.Reports,
            LengthUnit = format.LengthUnitName,
        };
    }

    static string StockCaption(Books books, PaperFormat format) =>
        format.Words[books.Forecast.Days.IsEmpty ? "chart-stock-caption-past" : "chart-stock-caption"]
        + (books.Stock.Kinds.Count() > 1 ? " " + format.Words["chart-all-stocks"] : "");

    static IEnumerable<Glance> Glances(Books books, PaperFormat format)
    {
        var book = books.Shoot;
        var total = book.Total;
        yield return new Glance(PaperFormat.Number(book.Counted.Count()), format.Words["rolls"]);
        yield return new Glance(PaperFormat.Number(book.Counted.Sum(r => r.Layers.Length)), format.Words["takes"]);
        yield return new Glance(format.AccountWithUnit(total.Exposed, books.Metric.Total.Exposed), format.Words["glance-exposed"]);
        yield return new Glance(format.AccountWithUnit(total.Good, books.Metric.Total.Good), format.Words["glance-good"]);
        yield return new Glance(PaperFormat.Clock(books.Stock.Use.ScreenTime), format.Words["glance-screen"]);
        yield return new Glance(format.ToOne(books.Stock.Use.ExposedToGood), format.Words["exposed-to-good"]);
    }

    static RollLine Line(RollBook roll, Books books, PaperFormat format)
    {
        var work = roll.LabWork;
        return new RollLine(
            roll.Roll.Name.Value,
            books.Production.LotOf(roll.Roll)?.Stock.Value ?? "–",
            PaperFormat.Number(roll.Layers.Length),
            TallyFacts.Of(roll.Tally, books.Metric.Of(roll), format),
            IsInCamera(roll) ? PaperFormat.Dash : Left([roll], books, format),
            IsInCamera(roll) ? Left([roll], books, format) : PaperFormat.Dash,
            roll.Roll.IsPractice ? format.Words["process-practice"] : format.Process(work.Process),
            work.Push == 0 ? "–" : format.Stops(work.Push),
            CameraReportPaper.NameOf(roll.Roll) + ".html",
            roll.Roll.IsPractice,
            ReloadedAs(roll, books, format)
        );
    }

    static bool IsInCamera(RollBook roll) => roll.Roll.Unload is null;

    // What was not shot of some rolls.
    static string Left(IEnumerable<RollBook> rolls, Books books, PaperFormat format)
    {
        var (film, centimetres) = (Footage.Zero, 0L);
        foreach (var roll in rolls)
        {
            film += roll.Tally.ShortEnd;
            centimetres += books.Metric.Of(roll).ShortEnd;
        }

        return film == Footage.Zero ? PaperFormat.Dash : format.Account(film, centimetres);
    }

    // Both are true at a glance: film was left over, and no short end is left. In a camera it is none yet.
    static string ReloadedAs(RollBook roll, Books books, PaperFormat format) =>
        IsInCamera(roll)
            ? format.Words["in-camera"]
            : string.Join(
                ", ",
                books
                    .Stock.PiecesOf(roll.Roll)
                    .Where(e => e.UsedBy is not null)
                    .Select(e => format.Words.Fill("piece-reloaded-as", ("piece", e.Name), ("roll", e.UsedBy!.Name.Value)))
            );

    static StockLine Line(StockLotBook lot, MetricStock metric, PaperFormat format) =>
        new(
            lot.Lot.Name.Value,
            lot.Lot.Stock.Value,
            PaperFormat.Number(lot.UnitsReceived + lot.UnitsCame),
            PaperFormat.Number(lot.UnitsLoaded + lot.UnitsPractised),
            PaperFormat.Number(lot.UnitsSentAway + lot.UnitsLost),
            PaperFormat.Number(lot.UnitsUnopened),
            format.Account(lot.OnHand, metric.OnHand),
            lot.ShortEndCans == 0
                ? PaperFormat.Dash
                : PaperFormat.Number(lot.ShortEndCans) + ": " + format.Account(lot.ShortEnds, metric.ShortEnds),
            lot.Lot.Expires is { } expires ? format.Date(expires.Value) : "–",
            lot.IsPractice
        );

    static StockMoveLine Line(StockMove move, Books books, PaperFormat format) =>
        new(
            format.Date(move.On),
            WhatHappened(move, books, format),
            move.ShortEndOf is { } parent
                ? PieceOf(move, parent, books)
                : format.Words.Fill("unit-of-lot", ("unit", PaperFormat.Number(move.Unit ?? 0)), ("lot", move.Lot.Name.Value)),
            move.IsOff ? PaperFormat.Dash : format.Length(move.Film),
            string.Join("; ", new[] { move.Entry.Note?.Value, move.Counts ? null : format.Words["stock-not-counted"] }.OfType<string>()),
            move.Counts
        );

    // The can stays where film of it is thrown away, so the lost film is no length of the can.
    static string WhatHappened(StockMove move, Books books, PaperFormat format)
    {
        var what =
            move is { Entry: StockSplit, Counts: true }
                ? format.Words.Fill(
                    "stock-split-into",
                    (
                        "pieces",
                        string.Join(
                            ", ",
                            books.Stock.CutInto(move).Select(p => p.Name + " " + format.Length(books.Stock.FilmIn(p, move.At)))
                        )
                    )
                )
            : move.With is { } with ? format.Words.Fill("stock-" + move.Entry.Word + "-with", ("with", with))
            : format.Words["stock-" + move.Entry.Word];
        return move.IsOff && move.Film > Footage.Zero
            ? format.Words.Fill("stock-off", ("what", what), ("film", format.Length(move.Film)))
            : what;
    }

    static ShortEndLine Line(StockShortEnd end, Books books, PaperFormat format) =>
        new(
            StockFacts.NameOf(end, format),
            end.Lot.Name.Value,
            end.Lot.Stock.Value,
            format.Length(books.Stock.FilmIn(end, DateTime.MaxValue)),
            end.UsedBy is { } roll ? format.Words.Fill("short-end-loaded", ("roll", roll.Name.Value))
                : books.Stock.WentAway(end) is { } gone ? WhatHappened(gone, books, format)
                : end.OnHand > Footage.Zero ? format.Words["short-end-in-can"]
                : PaperFormat.Dash
        );

    // What is cut has no piece yet.
    static string PieceOf(StockMove move, Roll parent, Books books) =>
        books.Stock.PiecesOf(parent).FirstOrDefault(e => e.Piece == move.Piece) is { IsWhole: false } piece && move.Entry is not StockSplit
            ? piece.Name
            : StockShortEnd.NameOf(parent.Name.Value);

    static StripFacts StripOf(RollBook roll, double? gutter, Books books, PaperFormat format) =>
        new(
            roll.Roll.Name.Value,
            "strip-" + FileNames.Safe(roll.Roll.Name.Value),
            CameraReportPaper.NameOf(roll.Roll) + ".html",
            format.Words.Fill(
                "strip-caption",
                ("roll", roll.Roll.Name.Value),
                ("exposed", format.Account(roll.Tally.Exposed, books.Metric.Of(roll).Exposed)),
                ("loaded", format.LengthWithUnit(roll.Strip.Loaded))
            ),
            new Markup(gutter is { } left ? StripPicture.DrawBrief(roll, format, left) : StripPicture.Draw(roll, format)),
            new Markup(StripPicture.Draw(roll, format, PictureWidth.Narrow))
        );
}
