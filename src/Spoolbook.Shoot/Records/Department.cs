using System.Collections.Immutable;

namespace Spoolbook.Shoot.Records;

/// <summary>
/// Everything that a school's own file says, for all the productions below its folder. Immutable; null or empty where nothing was
/// written.
/// </summary>
public sealed record Department(Place Place)
{
    /// <summary>The name of its file.</summary>
    public const string FileName = "school.yaml";

    /// <summary>Its name, logo and colours; null where nothing was written.</summary>
    public School? School { get; init; }

    /// <summary>The people of the school.</summary>
    public ImmutableArray<Person> People { get; init; } = [];

    /// <summary>Raw stock on the shelf, as it was bought.</summary>
    public ImmutableArray<StockLot> Lots { get; init; } = [];

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

    /// <summary>Cases, keys, spools and everything else that is lent.</summary>
    public ImmutableArray<KitItem> Items { get; init; } = [];

    /// <summary>The labs that it works with.</summary>
    public ImmutableArray<SchoolLab> Labs { get; init; } = [];

    /// <summary>Days on which the store is closed.</summary>
    public ImmutableArray<Located<DateOnly>> Holidays { get; init; } = [];

    /// <summary>What one production may cost, in the currency of its rates; null where nothing was written.</summary>
    public Located<decimal>? Budget { get; init; }

    /// <summary>The language of the school's own papers, as in BCP 47; null for English.</summary>
    public Located<string>? Language { get; init; }

    /// <summary>The unit of length on them; null for feet.</summary>
    public Located<LengthUnit>? Units { get; init; }

    /// <summary>What is lent to whom, in the order of the list.</summary>
    public ImmutableArray<KitLoan> Loans { get; init; } = [];

    /// <summary>The names of all pieces that can be lent.</summary>
    public IEnumerable<Located<string>> PieceNames =>
        [
            .. Bodies.Select(b => b.Name),
            .. Lenses.Select(l => l.Name),
            .. Filters.Select(f => f.Name),
            .. Meters.Select(m => m.Name),
            .. Motors.Select(m => m.Name),
            .. Items.Select(i => i.Name),
        ];
}
