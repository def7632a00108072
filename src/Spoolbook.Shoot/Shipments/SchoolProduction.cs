using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;

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

    /// <summary>One of its places, from the school's folder.</summary>
    public Place At(Place place) => place with { File = Folder.Length == 0 ? place.File : $"{Folder}/{place.File}" };

    /// <summary>Whether a place, from the school's folder, is in one of its files.</summary>
    public bool Holds(Place place) => Folder.Length == 0 || place.File.StartsWith(Folder + "/", StringComparison.Ordinal);

    /// <summary>Film in the cans of some of its rolls, in feet.</summary>
    public Film.Ratio Feet(IEnumerable<RollBook> rolls) =>
        rolls.Aggregate(Film.Ratio.Zero, (sum, r) => sum + r.Tally.InCan.Feet(Books.Production.Gauge));
}
