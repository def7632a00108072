using System.Collections.Immutable;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.Facts;

/// <summary>The facts of the wrap summary, and of the page that shows all of it at a glance.</summary>
public sealed record WrapSummaryFacts(PaperHead Head) : PaperFacts(Head)
{
    public required ImmutableArray<PersonFacts> People { get; init; }
    public required ImmutableArray<Glance> Glances { get; init; }
    public required TallyFacts Tally { get; init; }
    public required ImmutableArray<RollLine> Rolls { get; init; }
    public required ImmutableArray<DayLine> Days { get; init; }
    public required ImmutableArray<CoverageLine> Coverage { get; init; }
    /// <summary>Whether any shot has a description.</summary>
    public required bool Described { get; init; }
    public required string CoverageSummary { get; init; }
    public required ImmutableArray<StockLine> Stock { get; init; }
    public required ForecastFacts Forecast { get; init; }
    public required ImmutableArray<ChartFacts> StockChart { get; init; }
    public required ImmutableArray<ChartFacts> AccountChart { get; init; }
    public required ImmutableArray<ChartFacts> RatioChart { get; init; }
    public required ImmutableArray<StockMoveLine> StockLog { get; init; }
    public required CostFacts Bought { get; init; }
    public required CostFacts Ordered { get; init; }
    public required string CostToDate { get; init; }
    public required string CostCommitted { get; init; }
    public required string CostToEnd { get; init; }
    public required string CostToEndFilm { get; init; }
    public required ImmutableArray<PartFacts> Parts { get; init; }
    public required ImmutableArray<FindingFacts> Findings { get; init; }
    public required ImmutableArray<WaiverFacts> Waivers { get; init; }
    public ImmutableArray<RuleFacts> Rules { get; init; } = [];
    public required KitFacts Kit { get; init; }
    /// <summary>What the patterns of all the strips mean.</summary>
    public required Pages.Markup Legend { get; init; }
    public required Pages.Markup PhoneLegend { get; init; }
    public required ImmutableArray<StripFacts> Strips { get; init; }
    /// <summary>The papers that there is one of, or one for each consignment and body.</summary>
    public required ImmutableArray<PaperLink> Papers { get; init; }

    /// <summary>The camera reports, each called by its roll.</summary>
    public ImmutableArray<PaperLink> Reports { get; init; } = [];

    public required string LengthUnit { get; init; }
}

/// <summary>Someone of the crew.</summary>
public sealed record PersonFacts(string Name, string Role);

/// <summary>A figure to be seen at a glance.</summary>
public sealed record Glance(string Value, string What);

/// <summary>A roll in one line.</summary>
public sealed record RollLine(string Roll, string Stock, string Takes, TallyFacts Tally, string Process, string Push, string Page, bool Practice);

/// <summary>What one day did to the film, or the shoot to date.</summary>
/// <param name="Day">The day's number on the schedule.</param>
/// <param name="Where">Where it was shot, and what was noted of the day.</param>
public sealed record DayLine(
    string Day,
    string Date,
    ImmutableArray<string> Where,
    string Takes,
    string Loaded,
    TallyFacts Tally,
    string ShortEnds,
    string OnHand,
    string Screen,
    string Ratio,
    bool Total);

/// <summary>A lot of stock in one line.</summary>
public sealed record StockLine(string Lot, string Stock, string Received, string Loaded, string Gone, string Left, string LeftLength, string ShortEnds, string Expires, bool Practice);

/// <summary>The use of film by one kind of part: by scene, by lot, by body.</summary>
/// <param name="SharesFilm">Whether takes of several parts may lie on the same film.</param>
public sealed record PartFacts(string Heading, string Kind, ImmutableArray<PartLine> Lines, bool SharesFilm);

/// <summary>How one part of the shoot used its film.</summary>
public sealed record PartLine(string Name, TallyFacts Tally, string Screen, string Ratio, string WasteRate, string Takes, string TakesEach);

/// <summary>A line of the stock log.</summary>
public sealed record StockMoveLine(string Date, string What, string Stock, string Length, string Remark, bool Counts);

/// <summary>A roll's picture.</summary>
/// <param name="Id">For a link within the page.</param>
/// <param name="Page">The roll's camera report.</param>
public sealed record StripFacts(string Roll, string Id, string Page, string Caption, Pages.Markup Picture, Pages.Markup PhonePicture);

/// <summary>A link to a paper.</summary>
public sealed record PaperLink(string What, string Page, string Pdf);

/// <summary>A level or a tolerance that the production sets for itself.</summary>
public sealed record RuleFacts(string Name, string Usual, string Set)
{
    internal static ImmutableArray<RuleFacts> Of(ImmutableArray<RuleChange> changes, Wording say) => [.. changes.Select(c => Of(c, say))];

    static RuleFacts Of(RuleChange change, Wording say) => change switch
    {
        LevelChange level => new(level.Name, Word(level.Usual, say), Word(level.Set, say)),
        ToleranceChange tolerance => new(tolerance.Name, tolerance.Usual, tolerance.Set),
        _ => throw new ArgumentException($"No words for {change}.", nameof(change)),
    };

    static string Word(Level? level, Wording say) => say.Words["level-" + (level?.ToString().ToLowerInvariant() ?? "off")];
}

/// <summary>A finding written out.</summary>
/// <param name="Id">For a link within the page.</param>
/// <param name="Message">With what to write or what was written set as such.</param>
/// <param name="Help">The way out, set likewise; null for none.</param>
public sealed record FindingFacts(string Id, string Level, string Check, Pages.Markup Message, string Where, Pages.Markup? Help, bool Error, bool Warning)
{
    internal static ImmutableArray<FindingFacts> Of(ImmutableArray<Finding> findings, Wording say) =>
    [
        .. findings.Select((f, i) => new FindingFacts(
            "finding-" + Wording.Number(i + 1),
            say.Words["level-" + f.Level.ToString().ToLowerInvariant()],
            f.Check,
            Quoting.Of(f.Message),
            f.Place.ToString(),
            f.Help.Length == 0 ? null : Quoting.Of(f.Help),
            f.Level == Shoot.Findings.Level.Error,
            f.Level == Shoot.Findings.Level.Warning)),
    ];
}
