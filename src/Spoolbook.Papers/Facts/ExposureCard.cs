using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Film.Exposures;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Facts;

/// <summary>The facts of one body's exposure card.</summary>
public sealed record ExposureCardFacts(PaperHead Head) : PaperFacts(Head)
{
    /// <summary>Whether it is the card for the pocket, which leaves out what its owner knows by heart.</summary>
    public bool Pocket { get; init; }

    public required string Body { get; init; }
    public required string What { get; init; }
    public required string Shutter { get; init; }
    public required string FinderLoss { get; init; }
    public required string MeterFor { get; init; }
    public required bool Adapted { get; init; }
    public required string FullWind { get; init; }
    public required string RunUnit { get; init; }
    public required ImmutableArray<CardSpeed> Speeds { get; init; }
    public required ImmutableArray<CardMark> Marks { get; init; }
    public required ImmutableArray<CardFilter> Filters { get; init; }
    public required ImmutableArray<string> SunnyHeads { get; init; }
    public required ImmutableArray<SunnyRow> Sunny { get; init; }
    public required string SunnyTime { get; init; }
}

/// <summary>What the body does at one speed.</summary>
/// <param name="Run">Film that runs in a minute, in feet or metres as the production counts.</param>
/// <param name="Normal">Whether it is the speed that everything else is told against.</param>
public sealed record CardSpeed(string Speed, string Marked, string Adapted, string Stops, string Run, string Wind, string Looks, bool Normal);

/// <summary>What a mark of the variable shutter does.</summary>
public sealed record CardMark(string Mark, string Open, string Stops, string Marked, string Adapted);

/// <summary>What a filter costs.</summary>
public sealed record CardFilter(string Filter, string What, string Stops);

/// <summary>The stop for a kind of daylight, a stock each.</summary>
public sealed record SunnyRow(string Light, ImmutableArray<string> Stops);

/// <summary>Gathers the facts of exposure cards.</summary>
internal static class ExposureCards
{
    /// <summary>The bodies that a card can be made for: those whose shutter angle and speeds were written down.</summary>
    public static IEnumerable<Body> Bodies(Production production) => production.Bodies.Where(b => b.ShutterAngle is not null && b.Speeds.Length > 0);

    public static ExposureCardFacts Of(Body body, Production production, PaperHead head, Wording say)
    {
        var card = CardOf(body, production);
        var adapted = production.MeterFor == FinderPractice.Adapted;
        var stocks = production.Lots.Where(l => l.Practice?.Value != true).DistinctBy(l => (l.Stock.Value, l.Index.Value)).ToList();

        // The sunny-day column follows the production's practice: one time, whichever, kept to throughout.
        var metered = adapted ? card : card with { FinderLoss = Ratio.Zero };
        return new ExposureCardFacts(head)
        {
            Body = body.Name.Value,
            What = body.What?.Value ?? "",
            Shutter = card.Shutter.ToString(),
            FinderLoss = say.Percent(card.FinderLoss),
            MeterFor = say.Words[adapted ? "meter-for-adapted" : "meter-for-marked"],
            Adapted = adapted,
            FullWind = body.FullWind is { } wind ? say.LengthWithUnit(wind.Value) : say.Words["no-spring"],
            RunUnit = say.Words[production.Units == LengthUnit.Metres ? "metres-a-minute" : "feet-a-minute"],
            Speeds = [.. ExposureCard.Rows(card).Select(r => Speed(r, production, say))],
            Marks = [.. ExposureCard.Marks(card, body.ShutterMarks.Select(Opening)).Select(m => Mark(m, say))],
            Filters = [.. production.Filters.Select(f => new CardFilter(f.Name.Value, f.What?.Value ?? "", f.Stops is { } stops ? say.Stops(stops.Value) : say.Words["not-stated"]))],
            SunnyHeads = [.. stocks.Select(s => s.Stock.Value)],
            Sunny = [.. Sunny(metered, stocks, say)],
            SunnyTime = ExposureTime.Of(card.Shutter, Film.Speed.Normal).Adapted(metered.FinderLoss).ToString(),
        };
    }

    static ExposureCardBody CardOf(Body body, Production production) => new()
    {
        Speeds = [.. body.Speeds.Select(s => s.Value)],
        Shutter = new Shutter(body.ShutterAngle!.Value),
        FinderLoss = body.FinderLoss?.Value ?? Ratio.Zero,
        Spring = body.FullWind is { } wind ? new SpringMotor(wind.Value) : null,
        Gauge = production.Gauge,
        Projection = production.ProjectedAt,
    };

    static ShutterOpening Opening(Shoot.Records.ShutterMark mark) => mark.Stops is { } stops && mark.Open.Value.Sign > 0
        ? new ShutterOpening(mark.Name.Value, mark.Open.Value, -stops.Value)
        : ShutterOpening.ByOpening(mark.Name.Value, mark.Open.Value);

    static CardSpeed Speed(ExposureCardRow row, Production production, Wording say) => new(
        row.Speed.ToString(),
        row.Marked.ToString(),
        row.Adapted.ToString(),
        say.Stops(row.StopsFromNormal),
        say.Quantity(production.Units == LengthUnit.Metres ? RunningTime.MetresPerMinute(row.Speed, production.Gauge) : row.FeetPerMinute),
        row.SecondsOnFullWind is { } seconds ? say.Seconds(seconds) : "–",
        row.ApparentSpeed == Ratio.One ? say.Words["looks-normal"]
            : row.ApparentSpeed > Ratio.One ? say.Words.Fill("looks-faster", ("times", say.Quantity(row.ApparentSpeed)))
            : say.Words.Fill("looks-slower", ("times", say.Quantity(Ratio.One / row.ApparentSpeed))),
        row.Speed == Film.Speed.Normal);

    static CardMark Mark(ExposureCardMark mark, Wording say) => new(
        mark.Opening.Name,
        mark.Opening.OpenFraction.ToString(),
        mark.Opening.IsBlack ? say.Words["black"] : say.Stops(mark.Opening.Stops),
        mark.Marked?.ToString() ?? "–",
        mark.Adapted?.ToString() ?? "–");

    static IEnumerable<SunnyRow> Sunny(ExposureCardBody card, List<StockLot> stocks, Wording say)
    {
        var columns = stocks.Select(s => ExposureCard.SunnyDay(card, s.Index.Value, Film.Speed.Normal)).ToList();
        return Enum.GetValues<DaylightKind>().Select((kind, i) => new SunnyRow(
            say.Words["daylight-" + kind.ToString().ToLowerInvariant()],
            [.. columns.Select(c => c[i].Stop.ToText(StopStep.Half))]));
    }
}
