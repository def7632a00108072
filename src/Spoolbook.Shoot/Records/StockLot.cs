using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Film.Exposures;

namespace Spoolbook.Shoot.Records;

/// <summary>A lot of raw stock: units of one length, one emulsion batch.</summary>
public sealed record StockLot(Place Place)
{
    /// <summary>The production's name for it: <c>N250-A</c>.</summary>
    public required Located<string> Name { get; init; }

    /// <summary>The stock's name as on the can.</summary>
    public required Located<string> Stock { get; init; }

    /// <summary>Emulsion and batch numbers as on the can.</summary>
    public Located<string>? Emulsion { get; init; }

    /// <summary>The maker's exposure index, in the light that it is balanced for.</summary>
    public required Located<int> Index { get; init; }

    /// <summary>The light that it is balanced for.</summary>
    public ColourBalance Balance { get; init; }

    /// <summary>How much more exposure it needs at long and short times, by the maker's table; null where it is not written.</summary>
    public ReciprocityTable? Reciprocity { get; init; }

    /// <summary>Its process: <c>ecn-2</c>.</summary>
    public required Located<string> Process { get; init; }

    /// <summary>Film in a unit, without leader and trailer.</summary>
    public required Located<Footage> Length { get; init; }

    /// <summary>Rows of perforations, 1 or 2; null where it is not written.</summary>
    public Located<int>? Perforation { get; init; }

    /// <summary>How single-perforated film is wound, which puts its perforations on one side or the other.</summary>
    public Located<FilmWinding>? Winding { get; init; }

    /// <summary>Units of the first delivery, numbered from 1; more may have come by the stock log.</summary>
    public required Located<int> Units { get; init; }

    /// <summary>
    /// Units that the school bought, where the lot is on its shelf; the production's come by the stock log. Null for a lot of its own.
    /// </summary>
    public Located<int>? OnShelf { get; init; }

    /// <summary>Price of a unit, in the currency of the rates.</summary>
    public Located<decimal>? UnitPrice { get; init; }

    /// <summary>The last day of the month or the day printed on the can.</summary>
    public Located<DateOnly>? Expires { get; init; }

    /// <summary>Whether these units are for practice and counted apart.</summary>
    public Located<bool>? Practice { get; init; }

    /// <summary>How it was stored and carried: free lines.</summary>
    public ImmutableArray<Located<string>> Handling { get; init; } = [];
}
