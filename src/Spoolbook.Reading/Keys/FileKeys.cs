using System.Collections.Immutable;
using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

static class FileKeys
{
    public static readonly ValueKey<string> Version = new("spoolbook", WordForms.Version, "The version of the file format.")
    {
        Required = true,
        Example = "1",
    };

    public static readonly MapsKey Lots = new("lots", LotKeys.Table, "Raw stock received.");
    public static readonly EntriesKey StockLog = new(
        "stock-log",
        StockLogKeys.Kinds,
        "What happened to raw stock outside of the cameras, in order."
    );
    public static readonly MapKey Loan = new("loan", LoanKeys.Table, "Who lent the kit, to whom, and for how long.")
    {
        Example = "{owner: Film department, due: 2026-10-07}",
    };
    public static readonly MapsKey Bodies = new("bodies", BodyKeys.Table, "Camera bodies.");
    public static readonly MapsKey Lenses = new("lenses", LensKeys.Table, "Lenses.");
    public static readonly MapsKey Filters = new("filters", FilterKeys.Table, "Filters.");
    public static readonly MapsKey Meters = new("meters", MeterKeys.Table, "Light meters.");
    public static readonly MapsKey Motors = new("motors", MotorKeys.Table, "Motors.");
    public static readonly MapsKey Items = new("items", ItemKeys.Table, "Everything else that must go back.");
    public static readonly MapsKey Rolls = new("rolls", RollKeys.Table, "The rolls, where everything is in one file.");

    public static readonly ImmutableArray<Key> OfProduction =
    [
        ProductionKeys.Title,
        ProductionKeys.Code,
        ProductionKeys.Invented,
        ProductionKeys.Gauge,
        ProductionKeys.ProjectAt,
        ProductionKeys.Paper,
        ProductionKeys.Labels,
        ProductionKeys.Units,
        ProductionKeys.Language,
        ProductionKeys.MeterFor,
        ProductionKeys.School,
        ProductionKeys.Director,
        ProductionKeys.Cinematographer,
        ProductionKeys.Learners,
        ProductionKeys.People,
        ProductionKeys.Days,
        ProductionKeys.Shots,
        ProductionKeys.Plan,
        ProductionKeys.Lab,
        ProductionKeys.Rates,
        ProductionKeys.Accept,
        ProductionKeys.Rules,
    ];

    public static readonly ImmutableArray<Key> OfKit = [Loan, Bodies, Lenses, Filters, Meters, Motors, Items];

    public static readonly KeyTable Stock = new(Sentence.Of("common.owner.stock-file"), [Version, Lots, StockLog]);

    public static readonly KeyTable Kit = new(Sentence.Of("common.owner.kit-file"), [Version, .. OfKit]);

    public static readonly KeyTable Roll = new(Sentence.Of("common.owner.roll-file"), [Version, .. RollKeys.Table.Keys]);

    /// <summary>production.yaml of a folder as an editor is to hold it: a roll has a file of its own there.</summary>
    public static readonly KeyTable Production = new(
        Sentence.Of("common.owner.production-file"),
        [Version, .. OfProduction, Lots, StockLog, .. OfKit]
    );

    /// <summary>production.yaml, which can hold everything else too.</summary>
    public static readonly KeyTable Whole = new(
        Sentence.Of("common.owner.production-file"),
        [Version, .. OfProduction, Lots, StockLog, .. OfKit, Rolls]
    );
}
