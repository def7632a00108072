using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>Everything that was written down about one production. Immutable; null or empty where nothing was written.</summary>
public sealed record Production(Place Place)
{
    // In feet.
    const int LongestSpool = 200;

    readonly NameIndex<Roll> _rolls = new(r => r.Name.Value);
    readonly NameIndex<PlannedShot> _shots = new(s => s.Name);

    /// <summary>The working title.</summary>
    public required Located<string> Title { get; init; }

    /// <summary>A short code for cans: letters, digits and hyphens.</summary>
    public required Located<string> Code { get; init; }

    /// <summary>The gauge of all its film; by default 16 mm.</summary>
    public Gauge Gauge { get; init; } = Gauge.Film16;

    /// <summary>The projection speed; by default 24.</summary>
    public Speed ProjectedAt { get; init; } = Speed.Normal;

    /// <summary>The paper it prints on.</summary>
    public PaperSize Paper { get; init; }

    /// <summary>The sheet for its can labels; by default plain paper to cut.</summary>
    public CanLabels? Labels { get; init; }

    /// <summary>The unit of length on its papers.</summary>
    public LengthUnit Units { get; init; }

    /// <summary>The language of words and dates on its papers, as in BCP 47; by default <c>en</c>.</summary>
    public string Language { get; init; } = "en";

    /// <summary>The exposure time that its meters are set to.</summary>
    public FinderPractice MeterFor { get; init; }

    /// <summary>Says on the papers, in these words, that the production is invented; null for a real one.</summary>
    public Located<string>? Invented { get; init; }

    /// <summary>Its school; null where none was written.</summary>
    public School? School { get; init; }

    /// <summary>The director, by a person's id; null where nobody is written.</summary>
    public Located<string>? Director { get; init; }

    /// <summary>The cinematographer, by a person's id; null where nobody is written.</summary>
    public Located<string>? Cinematographer { get; init; }

    /// <summary>Who wants the learner's sheet, by a person's id.</summary>
    public ImmutableArray<Located<string>> Learners { get; init; } = [];

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

    /// <summary>What happened to raw stock outside the cameras, in the order of the log.</summary>
    public ImmutableArray<StockEntry> StockLog { get; init; } = [];

    /// <summary>The loan of the whole kit; null where it is not written.</summary>
    public Loan? Loan { get; init; }

    /// <summary>Its path from its school's folder, <c>first-year/ferry</c>; null where there is no school.</summary>
    public string? InSchool { get; init; }

    /// <summary>What the school lends it, in the order of the school's list.</summary>
    public ImmutableArray<KitLoan> SchoolLoans { get; init; } = [];

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

    /// <summary>The rolls, in the natural order of their names: R2 before R10.</summary>
    public ImmutableArray<Roll> Rolls { get; init; } = [];

    /// <summary>Rules broken intentionally in the whole production.</summary>
    public ImmutableArray<Waiver> Accept { get; init; } = [];

    /// <summary>Its own levels and tolerances; null where it keeps the house's.</summary>
    public HouseRules? Rules { get; init; }

    /// <summary>
    /// Parts that could not be read completely. Something that seems missing from one may well be there, so do not
    /// report it missing.
    /// </summary>
    public ImmutableArray<Part> Unread { get; init; } = [];

    /// <summary>The lot of a roll's film, for a short end through its parent; null if it cannot be found.</summary>
    public StockLot? LotOf(Roll roll)
    {
        // Bounded, because a careless sheet can make two rolls short ends of each other.
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

    /// <summary>Whether a unit of a lot came by the stock log, at any time.</summary>
    public bool Came(StockLot lot, int unit) =>
        StockLog.OfType<StockCame>().Any(e => e.Lot?.Value == lot.Name.Value && e.Units.Any(u => u.Value == unit));

    /// <summary>The roll of that name, or null.</summary>
    public Roll? RollNamed(string name) => _rolls.Find(Rolls, name);

    /// <summary>The shot of that name on the shot list, scene and letter together, or null.</summary>
    public PlannedShot? ShotNamed(string name) => _shots.Find(Shots, name);

    /// <summary>The body of that name, or null.</summary>
    public Body? BodyNamed(string? name) => Bodies.FirstOrDefault(b => b.Name.Value == name);

    /// <summary>The lens of that name, or null.</summary>
    public Lens? LensNamed(string? name) => Lenses.FirstOrDefault(l => l.Name.Value == name);

    /// <summary>The filter of that name, or null.</summary>
    public Filter? FilterNamed(string? name) => Filters.FirstOrDefault(f => f.Name.Value == name);

    /// <summary>The motor of that name, or null.</summary>
    public Motor? MotorNamed(string? name) => Motors.FirstOrDefault(m => m.Name.Value == name);

    /// <summary>The light of a take: as written on it, else on its shot in the list; null where neither has it.</summary>
    public Located<SubjectLight>? LightOf(Take take) => take.Light ?? ShotNamed(take.ShotName)?.Light;

    /// <summary>
    /// The mains, in hertz, of a take's discharge lamps: as written on it, else on its shot in the list; null where
    /// neither has it.
    /// </summary>
    public Located<int>? LampsOf(Take take) => take.Lamps ?? ShotNamed(take.ShotName)?.Lamps;

    /// <summary>The consignments that name a roll, in the order of the list.</summary>
    public IEnumerable<Consignment> ConsignmentsOf(Roll roll) =>
        (Lab?.Consignments ?? []).Where(c => c.Rolls.Any(r => r.Value == roll.Name.Value));

    /// <summary>
    /// The day on which a roll went to the lab: the day of the first consignment that names it, else as written on the
    /// roll; null where neither has it.
    /// </summary>
    public Located<DateOnly>? SentOn(Roll roll) =>
        ConsignmentsOf(roll).Select(c => c.SentOn).OfType<Located<DateOnly>>().MinBy(d => d.Value) ?? roll.Lab?.SentOn;

    /// <summary>
    /// Whether a body takes its rolls itself, so that one must be out before the next goes in. A body that takes more than
    /// 200 ft has magazines, of which several can be loaded: 100 and 200 ft come on camera spools, 400 ft on a core
    /// (Eastman Kodak, Student Filmmaker's Handbook, H-19). False where nothing says how much it takes.
    /// </summary>
    public bool TakesRollsItself(Body body) =>
        body.Takes is { } most && most.Value < FilmLength.OfFeet(LongestSpool + 1).In(Gauge, Speed.Normal);

    /// <summary>A person's name by id, or the id itself for somebody not on the crew list.</summary>
    public string NameOf(string id) => People.FirstOrDefault(p => p.Id.Value == id)?.FullName.Value ?? id;
}
