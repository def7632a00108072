using Spoolbook.Film;
using Spoolbook.Film.Exposures;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Jobs;
using Spoolbook.Papers.Typesetting.Setup;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.ExposureCards;

/// <summary>An exposure card for each body, on a sheet and for the pocket.</summary>
internal sealed class ExposureCardPaper : IPaper
{
    public IEnumerable<PaperJob> Jobs(PaperSource source)
    {
        var words = source.Words;
        foreach (var body in Bodies(source.Production))
        {
            var name = "exposure-card-" + FileNames.Safe(body.Name.Value);
            ExposureCardFacts Card() => Of(body, source.Production, source.Head, source.Format);
            yield return new PaperJob(name, "exposure-card.html", words["exposure-card"] + " " + body.Name.Value, _ => Card());
            yield return new PaperJob(name + "-pocket", "exposure-card.html", words["exposure-card-pocket"] + " " + body.Name.Value, _ =>
                Card() with
                {
                    Pocket = true,
                }
            )
            {
                Paper = Paper.A6,
                HasPage = false,
                LinkedFrom = LinkPlace.Nowhere,
            };
        }
    }

    /// <summary>The bodies that have a card: shutter angle and speeds were written down.</summary>
    static IEnumerable<Body> Bodies(Production production) =>
        production.Bodies.Where(b => b.ShutterAngle is not null && b.Speeds.Length > 0);

    static ExposureCardFacts Of(Body body, Production production, PaperHead head, PaperFormat format)
    {
        var card = CardOf(body, production);
        var adapted = production.MeterFor == FinderPractice.Adapted;
        var stocks = production.Lots.Where(l => l.Practice?.Value != true).DistinctBy(l => (l.Stock.Value, l.Index.Value)).ToList();

        // The sunny-day column follows the production's practice: one time, kept to throughout.
        var metered = adapted ? card : card with { FinderLoss = Ratio.Zero };
        return new ExposureCardFacts(head)
        {
            Body = body.Name.Value,
            What = body.What?.Value ?? "",
            Shutter = card.Shutter.ToString(),
            FinderLoss = body.FinderLoss is null ? format.Words["finder-loss-unknown"] : format.Percent(card.FinderLoss),
            MeterFor = format.Words[
                !adapted ? "meter-for-marked"
                : body.FinderLoss is null ? "meter-for-unknown"
                : "meter-for-adapted"
            ],
            Adapted = adapted,
            FullWind = body.FullWind is { } wind ? format.LengthWithUnit(wind.Value) : format.Words["no-spring"],
            RunUnit = format.Words[production.Units == LengthUnit.Metres ? "metres-a-minute" : "feet-a-minute"],
            Speeds = [.. ExposureCard.Rows(card).Select(r => Speed(r, body, r.Speed == card.Counted, production, format))],
            Marks = [.. ExposureCard.Marks(card, body.ShutterMarks.Select(m => m.Opening)).Select(m => Mark(m, body, format))],
            MarksCaption = format.Words.Fill("variable-shutter", ("speed", card.Counted.ToString())),
            Filters =
            [
                .. production.Filters.Select(f => new CardFilter(
                    f.Name.Value,
                    f.What?.Value ?? "",
                    f.Stops is { } stops ? PaperFormat.StopsGained(-stops.Value) : format.Words["not-stated"]
                )),
            ],
            SunnyHeads = [.. stocks.Select(s => Head(s, production, format))],
            Sunny = [.. Sunny(metered, stocks, production, format)],
            SunnyCaption = format.Words.Fill(
                "sunny-day",
                ("speed", card.Counted.ToString()),
                ("time", ExposureTime.Of(card.Shutter, card.Counted).Adapted(metered.FinderLoss).ToString())
            ),
        };
    }

    static ExposureCardBody CardOf(Body body, Production production) =>
        new()
        {
            Speeds = [.. body.Speeds.Select(s => s.Value)],
            Shutter = new Shutter(body.ShutterAngle!.Value),
            FinderLoss = body.FinderLoss?.Value ?? Ratio.Zero,
            Spring = body.FullWind is { } wind ? new SpringMotor(wind.Value) : null,
            Gauge = production.Gauge,
            Projection = production.ProjectedAt,
        };

    static CardSpeed Speed(ExposureCardRow row, Body body, bool counted, Production production, PaperFormat format) =>
        new(
            row.Speed.ToString(),
            row.Marked.ToString(),
            Corrected(row.Adapted, body),
            PaperFormat.StopsGained(row.StopsFromNormal),
            format.Quantity(
                production.Units == LengthUnit.Metres ? RunningTime.MetresPerMinute(row.Speed, production.Gauge) : row.FeetPerMinute
            ),
            row.SecondsOnFullWind is { } seconds ? format.Seconds(seconds) : "–",
            row.ApparentSpeed == Ratio.One ? format.Words["looks-normal"]
                : row.ApparentSpeed > Ratio.One ? format.Words.Fill("looks-faster", ("times", format.Quantity(row.ApparentSpeed)))
                : format.Words.Fill("looks-slower", ("times", format.Quantity(Ratio.One / row.ApparentSpeed))),
            counted
        );

    static CardMark Mark(ExposureCardMark mark, Body body, PaperFormat format) =>
        new(
            mark.Opening.Name,
            mark.Opening.OpenFraction.ToString(),
            mark.Opening.IsBlack ? format.Words["black"] : PaperFormat.StopsGained(mark.Opening.Stops),
            mark.Marked?.ToString() ?? "–",
            Corrected(mark.Adapted, body)
        );

    // A loss that nobody wrote down is not a loss of nothing: a corrected time that is none would leave the film a third of a stop short.
    static string Corrected(ExposureTime? time, Body body) => body.FinderLoss is null ? "–" : time?.ToString() ?? "–";

    static string Head(StockLot stock, Production production, PaperFormat format) =>
        LightMatch.DaylightFilter(production, stock.Balance) is { } filter
            ? format.Words.Fill("card-with-filter", ("set", AtIndex(stock, format)), ("filter", filter.Name))
            : AtIndex(stock, format);

    static string AtIndex(StockLot stock, PaperFormat format) =>
        format.Words.Fill("card-at-index", ("set", stock.Stock.Value), ("index", PaperFormat.Number(stock.Index.Value)));

    static CardLenses LensesOf(Production production) =>
        new(
            production.Lenses.Select(l => (Stop?)l.Widest?.Value).Where(s => s is not null).MinBy(s => s!.Value.Av),
            production.Lenses.Select(l => (Stop?)l.Smallest?.Value).Where(s => s is not null).MaxBy(s => s!.Value.Av),
            [
                .. production
                    .Filters.Where(f => f.Stops is { Value: > 0 } && f.Name.Value.StartsWith("ND", StringComparison.OrdinalIgnoreCase))
                    .Select(f => (f.Name.Value, f.Stops!.Value)),
            ]
        );

    static string Set(CardStop set, PaperFormat format)
    {
        var stop = set.Stop.ToText(StopStep.Half);
        return set.Missing > 0 ? format.Words.Fill("card-too-dark", ("set", stop), ("stops", PaperFormat.StopsGained(-set.Missing)))
            : set.Filter is { } filter
                ? format.Words.Fill(set.FilterInKit ? "card-with-filter" : "card-without-filter", ("set", stop), ("filter", filter))
            : stop;
    }

    static IEnumerable<SunnyRow> Sunny(ExposureCardBody card, List<StockLot> stocks, Production production, PaperFormat format)
    {
        var lenses = LensesOf(production);
        var columns = stocks
            .Select(s =>
            {
                var filter = LightMatch.DaylightFilter(production, s.Balance)?.Stops ?? 0;
                return ExposureCard.SunnyDay(card, s.Index.Value * Math.Pow(2, -filter), card.Counted);
            })
            .ToList();
        return Enum.GetValues<DaylightKind>()
            .Select(
                (kind, i) =>
                    new SunnyRow(
                        format.Words["daylight-" + kind.ToString().ToLowerInvariant()],
                        [.. columns.Select(c => Set(lenses.Set(c[i].Stop), format))]
                    )
            );
    }
}
