using Spoolbook.Film;
using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Forecasts;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Workbook;

/// <summary>The figures of the summary, section by section. A figure that another formula reads has a name.</summary>
sealed class SummaryFigures
{
    readonly LedgerSource _source;
    readonly WorkbookUnits _units;
    readonly WorkbookTerms _say;

    SummaryFigures(LedgerSource source, WorkbookUnits units, WorkbookTerms say) => (_source, _units, _say) = (source, units, say);

    public static IReadOnlyList<SummarySection> Of(LedgerSource source, WorkbookUnits units, WorkbookTerms say)
    {
        var figures = new SummaryFigures(source, units, say);
        return
        [
            new(say["heading.film"], [.. figures.Film()]),
            new(say["heading.how-it-was-used"], [.. figures.Use()]),
            new(say["heading.stock"], [.. figures.Stock()]),
            new(say["heading.will-it-last"], [.. SummaryForecast.Lines(source, say)]),
            new(
                source.Cost.Currency is { } currency ? say.Fill("heading.money-in", ("currency", currency)) : say["heading.money"],
                [.. figures.Money(), .. figures.ToTheEnd(), figures.WithoutRate()]
            ),
            new(say["heading.what-it-is-reckoned-with"], [.. figures.Settings()]),
        ];
    }

    IEnumerable<SummaryLine> Film()
    {
        var total = _source.Shoot.Total;
        var metric = _source.Books.Metric.Total;
        yield return Length("loaded", "SUM(Rolls[Loaded frames])", total.Loaded, "FilmLoaded", _say["remark.loaded"], metric.Loaded);
        yield return Length("good", "SUM(Rolls[Good frames])", total.Good, "FilmGood", "", metric.Good);
        yield return Length("hold", "SUM(Rolls[Hold frames])", total.Hold, "FilmHeld", "", metric.Hold);
        yield return Length("no-good", "SUM(Rolls[No good frames])", total.NoGood, "FilmNoGood", "", metric.NoGood);
        yield return Length("waste", "SUM(Rolls[Waste frames])", total.Waste, "FilmWasted", "", metric.Waste);
        foreach (var cause in Enum.GetValues<WasteCause>().Where(c => total.WastedBy(c) > Footage.Zero))
        {
            yield return SummaryLine.Length(
                "   " + _say.Fill("line.of-it", ("cause", _say.Code(null, Codes.Of(cause)))),
                $"SUMPRODUCT((Film[Waste by]=\"{Codes.Of(cause)}\")*Film[Frames])",
                total.WastedBy(cause),
                "",
                "FilmWastedBy" + cause,
                metric.Wasted.GetValueOrDefault(cause)
            );
        }

        yield return Length(
            "left-over",
            "SUM(Rolls[Left over frames])",
            total.ShortEnd,
            "FilmLeftOver",
            _say["remark.left-over"],
            metric.ShortEnd
        );
        yield return Length("exposed", "SUM(Rolls[Exposed frames])", total.Exposed, "FilmExposed", _say["remark.exposed"], metric.Exposed);
        yield return Line(
            "frames-unaccounted-for",
            CellValue.Calculated("FilmLoaded-FilmExposed-FilmLeftOver", 0),
            CellFormat.Count,
            _say["remark.unaccounted"]
        );
    }

    IEnumerable<SummaryLine> Use()
    {
        var use = _source.Stock.Use;
        yield return Line("takes", CellValue.Calculated("SUM(Rolls[Takes])", use.Takes), CellFormat.Count);
        yield return Line(
            "shots",
            CellValue.Calculated("SUM(Takes[New shot])", use.Shots),
            CellFormat.Count,
            _say["remark.shots"],
            "ShotsTaken"
        );
        yield return Line(
            "takes-a-shot",
            FilmSheet.Ratio("SUMPRODUCT((Takes[Scene and shot]<>\"\")*1)", "ShotsTaken", use.TakesAShot),
            CellFormat.Seconds
        );
        yield return Line(
            "good-screen-time",
            CellValue.Calculated("SUM(Rolls[Screen time])", _units.ScreenTime(use.Tally.Good)),
            CellFormat.Clock,
            _say["remark.screen-time"]
        );
        yield return Line(
            "exposed-to-good",
            FilmSheet.Ratio("FilmExposed", "FilmGood", use.ExposedToGood),
            CellFormat.ToOne,
            _say["remark.exposed-to-good"]
        );
        yield return Line("exposed-to-planned", Planned(use), CellFormat.ToOne, _say["remark.exposed-to-planned"]);
        yield return Line(
            "waste-rate",
            FilmSheet.Ratio("FilmWasted", "FilmExposed", use.WasteRate),
            CellFormat.Percent,
            _say["remark.waste-rate"]
        );
    }

    static CellValue Planned(UseOfFilm use) =>
        use.ExposedToPlanned is { } ratio ? CellValue.Calculated("FilmExposed/(PlannedSeconds*ProjectedAt)", ratio.ToDouble()) : "no plan";

    IEnumerable<SummaryLine> Stock()
    {
        var stock = _source.Stock;
        var metric = _source.Books.Metric.Stock;
        yield return Length(
            "received",
            "SUMPRODUCT((Stock[For]=\"shoot\")*Stock[Received frames])",
            new(stock.Counted.Sum(l => l.Received.Frames)),
            "FilmReceived",
            _say["remark.received"],
            metric.Received
        );
        foreach (var line in Origins())
        {
            yield return line;
        }

        yield return Length(
            "on-hand",
            "SUMPRODUCT((Stock[For]=\"shoot\")*Stock[On hand frames])",
            stock.OnHand,
            "FilmOnHand",
            _say["remark.on-hand"],
            metric.OnHand
        );
        yield return Length(
            "left-to-shoot",
            "SUMPRODUCT((Stock[For]=\"shoot\")*Stock[Left to shoot frames])",
            stock.Left,
            "FilmLeftToShoot",
            _say["remark.left-to-shoot"],
            metric.Left
        );
    }

    // How else film came, and all of it, which is what the accounts add up to.
    IEnumerable<SummaryLine> Origins()
    {
        var bridge = _source.Books.Bridge;
        SummaryLine Of(FilmOrigin origin, string line, string formula, string name) =>
            Length(line, formula, bridge.Of(origin).Film, name, _say["remark." + line], bridge.Of(origin).Centimetres);

        yield return Of(
            FilmOrigin.BoughtForPractice,
            "bought-for-practice",
            "SUMPRODUCT((Stock[For]=\"practice\")*Stock[Received frames])",
            "FilmBoughtForPractice"
        );
        yield return Of(FilmOrigin.Came, "came-from-others", AccountsTable.Moved("(StockLog[What]=\"came\")"), "FilmCame");
        yield return Of(FilmOrigin.FromNoCan, "from-no-can", "FilmExposed-SUM(Stock[Exposed frames])", "FilmFromNoCan");
        yield return Of(FilmOrigin.Remeasured, "remeasured", "SUM(Stock[Remeasured frames])", "FilmRemeasured");
        yield return Length(
            "all-the-film",
            "FilmReceived+FilmBoughtForPractice+FilmCame+FilmFromNoCan+FilmRemeasured",
            bridge.All,
            "FilmInAll",
            _say["remark.all-the-film"],
            bridge.Centimetres
        );
    }

    IEnumerable<SummaryLine> Money()
    {
        var cost = _source.Cost;
        SummaryLine At(CostStage stage, string remark, string name) =>
            Line(
                Codes.Of(stage),
                CellValue.Calculated($"SUMIFS(Cost[Amount],Cost[Stage],\"{Codes.Of(stage)}\")", (double)cost.TotalAt(stage)),
                CellFormat.Money,
                _say[remark],
                name
            );

        yield return At(CostStage.Bought, "remark.bought", "CostBought");
        yield return At(CostStage.Ordered, "remark.ordered", "CostOrdered");
        yield return At(CostStage.Committed, "remark.committed", "CostCommitted");
        yield return Line("total", CellValue.Calculated("SUM(Cost[Amount])", (double)cost.Total), CellFormat.Money, name: "CostTotal");
    }

    // Null is open: unknown, and not zero.
    IEnumerable<SummaryLine> ToTheEnd()
    {
        var end = _source.Books.ToEnd;
        CellValue Open(string formula, decimal? amount) =>
            amount is { } known ? CellValue.Calculated(formula, (double)known) : CellValue.CalculatedWords(formula, "open");
        yield return new(
            _say["line.film-still-needed"],
            end.Film is { } film ? film.Frames : default(long?),
            CellFormat.Length,
            _say["remark.film-needed"],
            "FilmToCome"
        )
        {
            Film = end.Film,
        };
        yield return Length(
            "film-lacking",
            WrongStock
                ? $"MIN(FilmToCome,MAX(0,FilmToCome-StockToShoot)+{SummaryForecast.WrongAtAverage})"
                : "MAX(0,FilmToCome-StockToShoot)",
            end.Lacking ?? Footage.Zero,
            "FilmLacking",
            _say["remark.film-lacking"]
        );
        yield return Line(
            "lab-to-come",
            Open(
                "IF(FilmToCome=\"\",\"open\",IF(FilmToCome=0,0,IF(OR(SUMIFS(Cost[Quantity],Cost[What],\"process\")=0,"
                    + "SUMPRODUCT((Cost[Stage]<>\"bought\")*(Cost[Amount]=\"open\"))>0),\"open\","
                    + "ROUND((CostOrdered+CostCommitted)*FilmToCome/FramesPerFoot/(SUMIFS(Cost[Quantity],Cost[What],"
                    + "\"process\",Cost[Unit],\"foot\")+SUMIFS(Cost[Quantity],Cost[What],\"process\",Cost[Unit],\"metre\")/0.3048),2))))",
                end.Lab
            ),
            CellFormat.Money,
            _say["remark.lab-to-come"],
            "LabToCome"
        );
        var ofSome = OfSomeStock(end);
        if (ofSome)
        {
            yield return Line(
                "price-of-lacking",
                (double?)end.Stock / _units.Length(end.Lacking ?? Footage.Zero),
                CellFormat.Money,
                _say["remark.price-of-lacking"],
                "PriceOfLacking"
            );
        }

        yield return Line(
            "stock-to-come",
            Open(
                ofSome
                    ? "IF(FilmToCome=\"\",\"open\",ROUND(FilmLacking/FramesPerUnit*PriceOfLacking,2))"
                    : "IF(FilmToCome=\"\",\"open\",IF(FilmLacking=0,0,IF(OR(SUMPRODUCT((Stock[For]=\"shoot\")*Stock[Received "
                        + "frames])=0,SUMPRODUCT((Stock[For]=\"shoot\")*(Stock[Unit price]=\"\"))>0),\"open\","
                        + "ROUND(SUMPRODUCT((Stock[For]=\"shoot\")*Stock[Units]*Stock[Unit "
                        + "price])*FilmLacking/SUMPRODUCT((Stock[For]=\"shoot\")*Stock[Received frames]),2))))",
                end.Stock
            ),
            CellFormat.Money,
            _say["remark.stock-to-come"],
            "StockToCome"
        );
        yield return Line(
            "at-this-rate-to-the-end",
            Open("IF(OR(LabToCome=\"open\",StockToCome=\"open\"),\"open\",CostTotal+LabToCome+StockToCome)", end.Total),
            CellFormat.Money,
            _source.Cost.Open.Any() ? _say["remark.to-the-end-at-least"] : _say["remark.to-the-end"],
            "CostAtTheEnd"
        );
    }

    bool WrongStock =>
        _source.Forecast is { Plain: { } plain, PlainLacking: { } lacking }
        && lacking > Footage.Max(Footage.Zero, plain - _source.Forecast.Input.Stock);

    // What is lacking may be one stock of several, at its own price.
    bool OfSomeStock(CostToEnd end) =>
        end is { Stock: not null, Lacking.Frames: > 0 }
        && _source.Forecast.PlainOrders!.Value.Any(o => !o.Order.Lots.IsEmpty && o.Order.Lots.Length < _source.Stock.Counted.Count());

    SummaryLine WithoutRate() =>
        Line(
            "lines-without-a-rate",
            CellValue.Calculated("COUNTIFS(Cost[Amount],\"open\")", _source.Cost.Open.Count()),
            CellFormat.Count,
            _say["remark.no-rate"]
        );

    IEnumerable<SummaryLine> Settings()
    {
        var production = _source.Shoot.Production;
        yield return Named("frames-a-foot", "FramesPerFoot", Exact(_units.FramesPerFoot), production.Gauge.Name);
        yield return Named(
            _units.InMetres ? "frames-a-metre" : "frames-a-foot-shown",
            "FramesPerUnit",
            CellValue.Calculated(_units.InMetres ? "FramesPerFoot/0.3048" : "FramesPerFoot", _units.FramesPerUnit.ToDouble()),
            _say["remark.frames-per-unit"]
        );
        yield return Line("unit-of-lengths", _units.UnitName, CellFormat.Words, name: "FilmUnit");
        yield return Named(
            "projection-speed",
            "ProjectedAt",
            Exact(production.ProjectedAt.FramesPerSecond),
            _say["remark.projection-speed"]
        );
        yield return Named(
            "planned-running-time",
            "PlannedSeconds",
            production.RunningTime is { } time ? Exact(time.Value) : default,
            _say["remark.running-time"]
        );
    }

    // A fraction such as 24000/1001 is written as a formula, so that nothing is lost.
    static CellValue Exact(Ratio ratio) => ratio.IsWhole ? (Ratio?)ratio : CellValue.Calculated(ratio.ToString(), ratio.ToDouble());

    SummaryLine Length(string line, string formula, Footage film, string name, string remark, long? centimetres = null) =>
        SummaryLine.Length(_say["line." + line], formula, film, remark, name, centimetres);

    // A line that other formulas depend on shows its name beside it.
    SummaryLine Named(string line, string name, CellValue value, string remark) =>
        Line(line, value, CellFormat.Plain, $"{remark} ({name})", name);

    SummaryLine Line(string line, CellValue value, CellFormat format, string remark = "", string? name = null) =>
        new(_say["line." + line], value, format, remark, name);
}
