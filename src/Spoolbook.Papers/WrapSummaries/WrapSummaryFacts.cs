using System.Collections.Immutable;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Jobs;
using Spoolbook.Papers.KitLists;
using Spoolbook.Papers.Pages;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>The facts of the wrap summary, and of the index page.</summary>
public sealed record WrapSummaryFacts(PaperHead Head) : PaperFacts(Head)
{
    public required ImmutableArray<PersonFacts> People { get; init; }
    public required ProducerFacts Producer { get; init; }
    public required ImmutableArray<Glance> Glances { get; init; }
    public required TallyFacts Tally { get; init; }
    public required ImmutableArray<RollLine> Rolls { get; init; }

    /// <summary>Whether any roll is for practice, which is in no sum.</summary>
    public required bool HasPractice { get; init; }

    /// <summary>Short ends of all the rolls that are out of the camera.</summary>
    public required string ShortEnd { get; init; }

    /// <summary>What is not shot yet of the rolls in the cameras; empty where none is in one.</summary>
    public required string InCamera { get; init; }
    public required ImmutableArray<DayLine> Days { get; init; }

    /// <summary>The shots side by side, row by row; each row has the shots of its columns.</summary>
    public required ImmutableArray<ImmutableArray<CoverageLine>> CoverageRows { get; init; }

    /// <summary>Whether any shot has a description.</summary>
    public required bool Described { get; init; }
    public required ImmutableArray<StockLine> Stock { get; init; }

    /// <summary>Every short end that was kept, and every piece of one.</summary>
    public required ImmutableArray<ShortEndLine> ShortEnds { get; init; }
    public required ForecastFacts Forecast { get; init; }
    public required ImmutableArray<ChartFacts> StockChart { get; init; }
    public required ImmutableArray<ChartFacts> AccountChart { get; init; }

    /// <summary>How all the film came that the chart shows.</summary>
    public required string AccountOf { get; init; }
    public required ImmutableArray<ChartFacts> RatioChart { get; init; }
    public required ImmutableArray<StockMoveLine> StockLog { get; init; }
    public required CostFacts Bought { get; init; }
    public required CostFacts Ordered { get; init; }
    public required CostFacts Committed { get; init; }
    public required ImmutableArray<PartFacts> Parts { get; init; }
    public required ImmutableArray<FindingFacts> Findings { get; init; }
    public required ImmutableArray<WaiverFacts> Waivers { get; init; }
    public ImmutableArray<RuleFacts> Rules { get; init; } = [];

    /// <summary>What no check could judge, each in a line.</summary>
    public ImmutableArray<string> NotLookedAt { get; init; } = [];
    public required KitFacts Kit { get; init; }

    /// <summary>The legend of all the strips.</summary>
    public required Markup Legend { get; init; }
    public required Markup PhoneLegend { get; init; }
    public required ImmutableArray<StripFacts> Strips { get; init; }

    /// <summary>The papers of which there is one, or one for each consignment and body.</summary>
    public required ImmutableArray<PaperLink> Papers { get; init; }

    /// <summary>The camera reports, under the roll's name.</summary>
    public ImmutableArray<PaperLink> Reports { get; init; } = [];

    public required string LengthUnit { get; init; }
}
