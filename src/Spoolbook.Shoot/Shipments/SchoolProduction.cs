using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Shoot.Shipments;

/// <summary>A production of a school, with its books.</summary>
/// <param name="Folder">Where it is, from the school's folder, with forward slashes.</param>
/// <param name="HasErrors">Whether its check finds errors.</param>
public sealed record SchoolProduction(string Folder, Books Books, bool HasErrors)
{
    /// <summary>Its title.</summary>
    public string Title => Books.Production.Title.Value;

    /// <summary>Its code, as on its cans.</summary>
    public string Code => Books.Production.Code.Value;

    /// <summary>Film in the cans of some of its rolls, in feet.</summary>
    public Film.Ratio Feet(IEnumerable<RollBook> rolls) =>
        rolls.Aggregate(Film.Ratio.Zero, (sum, r) => sum + r.Tally.InCan.Feet(Books.Production.Gauge));
}
