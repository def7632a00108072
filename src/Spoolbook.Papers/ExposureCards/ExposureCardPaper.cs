using Spoolbook.Film;
using Spoolbook.Film.Exposures;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Jobs;
using Spoolbook.Papers.Typesetting.Setup;
using Spoolbook.Papers.Wording;
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
            FinderLoss = format.Percent(card.FinderLoss),
            MeterFor = format.Words[adapted ? "meter-for-adapted" : "meter-for-marked"],
            Adapted = adapted,
            FullWind = body.FullWind is { } wind ? format.LengthWithUnit(wind.Value) : format.Words["no-spring"],
            RunUnit = format.Words[production.Units == LengthUnit.Metres ? "metres-a-minute" : "feet-a-minute"],
            Speeds = [.. ExposureCard.Rows(card).Select(r => Speed(r, production, format))],
            Marks = [.. ExposureCard.Marks(card, body.ShutterMarks.Select(m => m.Opening)).Select(m => Mark(m, format))],
            Filters =
            [
                .. production.Filters.Select(f => new CardFilter(
                    f.Name.Value,
                    f.What?.Value ?? "",
                    f.Stops is { } stops ? format.Stops(stops.Value) : format.Words["not-stated"]
                )),
            ],
            SunnyHeads = [.. stocks.Select(s => s.Stock.Value)],
            Sunny = [.. Sunny(metered, stocks, format)],
            SunnyTime = ExposureTime.Of(card.Shutter, Film.Speed.Normal).Adapted(metered.FinderLoss).ToString(),
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

    static CardSpeed Speed(ExposureCardRow row, Production production, PaperFormat format) =>
        new(
            row.Speed.ToString(),
            row.Marked.ToString(),
            row.Adapted.ToString(),
            format.Stops(row.StopsFromNormal),
            format.Quantity(
                production.Units == LengthUnit.Metres ? RunningTime.MetresPerMinute(row.Speed, production.Gauge) : row.FeetPerMinute
            ),
            row.SecondsOnFullWind is { } seconds ? format.Seconds(seconds) : "–",
            row.ApparentSpeed == Ratio.One ? format.Words["looks-normal"]
                : row.ApparentSpeed > Ratio.One ? format.Words.Fill("looks-faster", ("times", format.Quantity(row.ApparentSpeed)))
                : format.Words.Fill("looks-slower", ("times", format.Quantity(Ratio.One / row.ApparentSpeed))),
            row.Speed == Film.Speed.Normal
        );

    static CardMark Mark(ExposureCardMark mark, PaperFormat format) =>
        new(
            mark.Opening.Name,
            mark.Opening.OpenFraction.ToString(),
            mark.Opening.IsBlack ? format.Words["black"] : format.Stops(mark.Opening.Stops),
            mark.Marked?.ToString() ?? "–",
            mark.Adapted?.ToString() ?? "–"
        );

    static IEnumerable<SunnyRow> Sunny(ExposureCardBody card, List<StockLot> stocks, PaperFormat format)
    {
        var columns = stocks.Select(s => ExposureCard.SunnyDay(card, s.Index.Value, Film.Speed.Normal)).ToList();
        return Enum.GetValues<DaylightKind>()
            .Select(
                (kind, i) =>
                    new SunnyRow(
                        format.Words["daylight-" + kind.ToString().ToLowerInvariant()],
                        [.. columns.Select(c => c[i].Stop.ToText(StopStep.Half))]
                    )
            );
    }
}
