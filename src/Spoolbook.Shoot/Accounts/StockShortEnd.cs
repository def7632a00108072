using System.Collections.Immutable;
using System.Globalization;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>A short end that was kept, or a piece of one: film left over on a roll, canned again.</summary>
/// <param name="Parent">The roll that it was cut from.</param>
/// <param name="Lot">The lot of its film.</param>
/// <param name="Length">Film in it, by the strip of its parent, or as it was cut.</param>
/// <param name="Made">The day it was canned.</param>
/// <param name="UsedBy">The roll that it was loaded as; null while it is in its can.</param>
public sealed record StockShortEnd(Roll Parent, StockLot Lot, Footage Length, DateOnly Made, Roll? UsedBy)
{
    /// <summary>Film in its can, less ends thrown away since; none once it is loaded, sent away, lost or damaged.</summary>
    public Footage OnHand { get; init; }

    /// <summary>How often its film went through an X-ray machine.</summary>
    public int XRayed { get; init; }

    /// <summary>Its number among the pieces of the short end; from 1.</summary>
    public required int Piece { get; init; }

    /// <summary>Whether it is the short end as its roll left it, and not a piece of it.</summary>
    public required bool IsWhole { get; init; }

    /// <summary>Its name, as on its can: <c>R1-SE</c>, of several pieces <c>R1-SE2</c>.</summary>
    public string Name => NameOf(Parent.Name.Value, IsWhole ? null : Piece);

    /// <summary>The name of the short end of a roll: <c>R1-SE</c>, of a piece of it <c>R1-SE2</c>.</summary>
    public static string NameOf(string roll, int? piece = null) => string.Create(CultureInfo.InvariantCulture, $"{roll}-SE{piece}");

    /// <summary>Its entries in the stock log.</summary>
    internal ImmutableArray<StockMove> Moves { get; init; } = [];

    /// <summary>Whether nothing was shot on its roll: a re-can, loaded and canned again unexposed.</summary>
    public required bool IsRecan { get; init; }
}
