using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>Everything that was written down about one production. Immutable; null or empty where nothing was written.</summary>
public sealed record Production(Place Place)
{
    /// <summary>The working title.</summary>
    public required Located<string> Title { get; init; }

    /// <summary>A short code that goes on cans: letters, digits and hyphens.</summary>
    public required Located<string> Code { get; init; }

    /// <summary>The gauge of all its film; 16 mm unless written.</summary>
    public Gauge Gauge { get; init; } = Gauge.Film16;

    /// <summary>The speed it will be projected at; 24 unless written.</summary>
    public Speed ProjectedAt { get; init; } = Speed.Normal;

    /// <summary>The paper it prints on.</summary>
    public PaperSize Paper { get; init; }

    /// <summary>What its can labels are printed on; plain paper to cut unless written.</summary>
    public CanLabels? Labels { get; init; }

    /// <summary>The unit of its papers.</summary>
    public LengthUnit Units { get; init; }

    /// <summary>The language of its papers' words and dates, as in BCP 47; <c>en</c> unless written.</summary>
    public string Language { get; init; } = "en";

    /// <summary>Which exposure time its meters are set for.</summary>
    public FinderPractice MeterFor { get; init; }

    /// <summary>Says that the production is an invented scenario, in the words to be printed; null for a real one.</summary>
    public Located<string>? Invented { get; init; }

    /// <summary>The school that it belongs to; null where nothing was written.</summary>
    public School? School { get; init; }

    /// <summary>The crew.</summary>
    public ImmutableArray<Person> People { get; init; } = [];

    /// <summary>The shooting days, in order of date.</summary>
    public ImmutableArray<ShootingDay> Days { get; init; } = [];

    /// <summary>The shot list.</summary>
    public ImmutableArray<PlannedShot> Shots { get; init; } = [];

    /// <summary>Planned running time in seconds at the projection speed.</summary>
    public Located<Ratio>? RunningTime { get; init; }

    /// <summary>Planned shooting ratio: footage exposed to footage in the film, the n of n:1.</summary>
    public Located<Ratio>? PlannedRatio { get; init; }

    /// <summary>Where the film goes.</summary>
    public Lab? Lab { get; init; }

    /// <summary>What things cost.</summary>
    public Rates? Rates { get; init; }

    /// <summary>Raw stock received.</summary>
    public ImmutableArray<StockLot> Lots { get; init; } = [];

    /// <summary>What happened to raw stock outside of the cameras, in the order of the log.</summary>
    public ImmutableArray<StockEntry> StockLog { get; init; } = [];

    /// <summary>What holds for the whole kit; null where nobody said.</summary>
    public Loan? Loan { get; init; }

    /// <summary>Camera bodies.</summary>
    public ImmutableArray<Body> Bodies { get; init; } = [];

    /// <summary>Lenses.</summary>
    public ImmutableArray<Lens> Lenses { get; init; } = [];

    /// <summary>Filters.</summary>
    public ImmutableArray<Filter> Filters { get; init; } = [];

    /// <summary>Light meters.</summary>
    public ImmutableArray<LightMeter> Meters { get; init; } = [];

    /// <summary>Motors.</summary>
    public ImmutableArray<Motor> Motors { get; init; } = [];

    /// <summary>Everything else that must go back.</summary>
    public ImmutableArray<KitItem> Items { get; init; } = [];

    /// <summary>The rolls, in order of their names as a reader would count them: R2 before R10.</summary>
    public ImmutableArray<Roll> Rolls { get; init; } = [];

    /// <summary>Rules broken on purpose in the whole production.</summary>
    public ImmutableArray<Waiver> Accept { get; init; } = [];

    /// <summary>Levels and tolerances of its own; null where it keeps the house's.</summary>
    public HouseRules? Rules { get; init; }

    /// <summary>
    /// Lists of which something that was written could not be read. What is not found in one of them may well
    /// exist: whoever says that something is not there holds back.
    /// </summary>
    public ImmutableArray<Part> Unread { get; init; } = [];

    /// <summary>The lot that a roll's film came from, through its parent if it is a short end; null if it cannot be found.</summary>
    public StockLot? LotOf(Roll roll)
    {
        // Bounded, since a careless sheet can make two rolls short ends of each other.
        var at = roll;
        for (var steps = 0; at is not null && steps <= Rolls.Length; steps++)
        {
            if (at.Lot is { } lot)
            {
                return Lots.FirstOrDefault(l => l.Name.Value == lot.Value);
            }

            at = at.ShortEndOf is { } parent ? RollNamed(parent.Value) : null;
        }

        return null;
    }

    /// <summary>Whether a unit of a lot came by the stock log, at whatever time.</summary>
    public bool Came(StockLot lot, int unit) => StockLog.OfType<StockCame>().Any(e => e.Lot?.Value == lot.Name.Value && e.Units.Any(u => u.Value == unit));

    /// <summary>The roll of that name, or null.</summary>
    public Roll? RollNamed(string name) => Rolls.FirstOrDefault(r => r.Name.Value == name);

    /// <summary>The body of that name, or null.</summary>
    public Body? BodyNamed(string? name) => Bodies.FirstOrDefault(b => b.Name.Value == name);

    /// <summary>The lens of that name, or null.</summary>
    public Lens? LensNamed(string? name) => Lenses.FirstOrDefault(l => l.Name.Value == name);

    /// <summary>The filter of that name, or null.</summary>
    public Filter? FilterNamed(string? name) => Filters.FirstOrDefault(f => f.Name.Value == name);

    /// <summary>The motor of that name, or null.</summary>
    public Motor? MotorNamed(string? name) => Motors.FirstOrDefault(m => m.Name.Value == name);

    /// <summary>The light that a take was shot in: as written on it, else on its shot in the list; null where nobody said.</summary>
    public Located<SubjectLight>? LightOf(Take take) => take.Light ?? Shots.FirstOrDefault(s => s.Name == take.ShotName)?.Light;

    /// <summary>The mains, in hertz, of the discharge lamps that lit a take: as written on it, else on its shot in the list; null where nobody said.</summary>
    public Located<int>? LampsOf(Take take) => take.Lamps ?? Shots.FirstOrDefault(s => s.Name == take.ShotName)?.Lamps;

    /// <summary>The consignments that name a roll, in the order of the list.</summary>
    public IEnumerable<Consignment> ConsignmentsOf(Roll roll) => (Lab?.Consignments ?? []).Where(c => c.Rolls.Any(r => r.Value == roll.Name.Value));

    /// <summary>The day on which a roll went to the lab: of the first consignment that names it, else as written on the roll; null where nobody said.</summary>
    public Located<DateOnly>? SentOn(Roll roll) => ConsignmentsOf(roll).Select(c => c.SentOn).OfType<Located<DateOnly>>().MinBy(d => d.Value) ?? roll.Lab?.SentOn;

    /// <summary>A person's name by id, or the id itself where the crew list lacks it.</summary>
    public string NameOf(string id) => People.FirstOrDefault(p => p.Id.Value == id)?.FullName.Value ?? id;
}

/// <summary>The parts of a production, as far as it matters whether one could be read whole.</summary>
public enum Part
{
    /// <summary>The crew.</summary>
    People,

    /// <summary>The shooting days.</summary>
    Days,

    /// <summary>The shot list.</summary>
    Shots,

    /// <summary>Lab and rates.</summary>
    Lab,

    /// <summary>Raw stock.</summary>
    Lots,

    /// <summary>Bodies, lenses and everything else that must go back.</summary>
    Kit,

    /// <summary>The rolls.</summary>
    Rolls,
}

/// <summary>What can labels are printed on.</summary>
/// <param name="Sheet">The sheet; plain paper to cut unless written.</param>
/// <param name="Start">The first label of the sheet that is still there, from 1, along the rows; 1 unless written.</param>
public sealed record CanLabels(Place Place, Located<LabelSheet>? Sheet, Located<int>? Start);

/// <summary>Someone of the crew.</summary>
public sealed record Person(Place Place, Located<string> Id, Located<string> FullName, Located<string>? Role);

/// <summary>A shooting day.</summary>
public sealed record ShootingDay(Place Place, Located<int> Number, Located<DateOnly> On, Located<string>? Where, Located<string>? Note);

/// <summary>A shot on the list: what has to be got.</summary>
/// <param name="Screen">Seconds wanted on the screen.</param>
/// <param name="Light">The light that its takes are shot in, unless one says otherwise.</param>
public sealed record PlannedShot(Place Place, Located<string> Scene, Located<string>? Shot, Located<string>? What, Located<Ratio>? Screen, Located<SubjectLight>? Light)
{
    /// <summary>Scene and letter together: <c>7B</c>.</summary>
    public string Name => Scene.Value + Shot?.Value;

    /// <summary>The mains that feed its lamps, in hertz, where discharge lamps on plain ballasts light it, unless a take says otherwise.</summary>
    public Located<int>? Lamps { get; init; }
}

/// <summary>The lab, and what was agreed with it.</summary>
public sealed record Lab(Place Place)
{
    /// <summary>Its name.</summary>
    public Located<string>? Name { get; init; }

    /// <summary>Its address, a line each.</summary>
    public ImmutableArray<Located<string>> Address { get; init; } = [];

    /// <summary>Whom to ask for, telephone, e-mail: free lines.</summary>
    public ImmutableArray<Located<string>> Contact { get; init; } = [];

    /// <summary>The processes that it runs, as it names them: <c>ecn-2</c>.</summary>
    public ImmutableArray<Located<string>> Processes { get; init; } = [];

    /// <summary>The farthest that it pushes or pulls, in stops.</summary>
    public Located<double>? PushMost { get; init; }

    /// <summary>Where the film goes back, a line each.</summary>
    public ImmutableArray<Located<string>> ReturnTo { get; init; } = [];

    /// <summary>Who pays, a line each.</summary>
    public ImmutableArray<Located<string>> BillTo { get; init; } = [];

    /// <summary>What was promised on the telephone: free lines.</summary>
    public ImmutableArray<Located<string>> Agreed { get; init; } = [];

    /// <summary>Whom it asks before it does anything that was not written down, a line each.</summary>
    public ImmutableArray<Located<string>> InDoubt { get; init; } = [];

    /// <summary>What is wanted for every roll unless it says otherwise.</summary>
    public ImmutableArray<Located<string>> Services { get; init; } = [];

    /// <summary>When the result is needed.</summary>
    public Located<DateOnly>? NeededBy { get; init; }

    /// <summary>What went to it together, or is to go, in the order of the list.</summary>
    public ImmutableArray<Consignment> Consignments { get; init; } = [];
}

/// <summary>Rolls that go to the lab together: one sending, however many boxes it takes.</summary>
public sealed record Consignment(Place Place)
{
    /// <summary>The day on which it went; null while it is only planned.</summary>
    public Located<DateOnly>? SentOn { get; init; }

    /// <summary>The rolls in it, by name.</summary>
    public ImmutableArray<Located<string>> Rolls { get; init; } = [];

    /// <summary>How it goes, and with whom: free words.</summary>
    public Located<string>? How { get; init; }

    /// <summary>Boxes; one unless written.</summary>
    public Located<int>? Boxes { get; init; }

    /// <summary>What the carrier, or the lab, gave for it: a number, a name.</summary>
    public Located<string>? Receipt { get; init; }
}

/// <summary>What things cost, in one currency; a rate that is not written leaves the cost open.</summary>
public sealed record Rates(Place Place)
{
    /// <summary>The currency's code, <c>EUR</c>.</summary>
    public required Located<string> Currency { get; init; }

    /// <summary>Prices of processing, by process.</summary>
    public ImmutableArray<ProcessRate> Processes { get; init; } = [];

    /// <summary>Surcharge for a roll pushed or pulled, for each stop or part of one.</summary>
    public Located<decimal>? PushPerStop { get; init; }

    /// <summary>Preparing one roll.</summary>
    public Located<decimal>? PrepPerRoll { get; init; }

    /// <summary>Scanning a foot or a metre.</summary>
    public LengthRate? Scan { get; init; }

    /// <summary>Scanning an hour of film, as it runs at the projection speed; where both are written, <see cref="Scan"/> holds.</summary>
    public Located<decimal>? ScanPerHour { get; init; }

    /// <summary>A workprint, a foot or a metre.</summary>
    public LengthRate? Workprint { get; init; }

    /// <summary>Sending one box.</summary>
    public Located<decimal>? Shipping { get; init; }

    /// <summary>Tax as a fraction: 0.19 for 19 %.</summary>
    public Located<decimal>? Tax { get; init; }
}

/// <summary>The price of one process.</summary>
/// <param name="Length">Price of a foot or a metre.</param>
/// <param name="Minimum">The least that a roll is charged.</param>
public sealed record ProcessRate(Place Place, Located<string> Process, LengthRate Length, Located<decimal>? Minimum);

/// <summary>A price by the length of the film.</summary>
/// <param name="Price">The price of one.</param>
/// <param name="By">What it is the price of: a foot, by the gauge's nominal count of frames, or a metre of 1/0.3048 such feet.</param>
public sealed record LengthRate(Located<decimal> Price, LengthUnit By);
