using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>One entry of the stock log, for one of its cans.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Lot">The lot of the film.</param>
/// <param name="Unit">The unit; null for a short end.</param>
/// <param name="ShortEndOf">The roll whose short end it is; null for a unit.</param>
/// <param name="At">The time that it counts from.</param>
/// <param name="Film">Film that came, went, or was thrown away.</param>
/// <param name="Fault">What is wrong with it; null where nothing is.</param>
public sealed record StockMove(StockEntry Entry, StockLot Lot, int? Unit, Roll? ShortEndOf, DateTime At, Footage Film, StockFault? Fault)
{
    /// <summary>Whether it counts in the books.</summary>
    public bool Counts => Fault is null or StockFault.LoadedBefore;

    /// <summary>Whether the can is still so: one that came back is neither gone nor new.</summary>
    public bool Lasts { get; init; } = true;

    /// <summary>Which piece of the short end it is about, from 1; null for a unit, or for a short end that never was.</summary>
    public int? Piece { get; init; }

    /// <summary>Whether film was thrown away from the can, and the can stays.</summary>
    public bool IsOff => Entry is StockRecanned or StockSplit;

    /// <summary>Who gave or got it; null where no name is written.</summary>
    public string? With =>
        Entry switch
        {
            StockCame came => came.From?.Value,
            StockSentAway sent => sent.To?.Value,
            _ => null,
        };

    /// <summary>The day that it counts from.</summary>
    public DateOnly On => DateOnly.FromDateTime(At);

    /// <summary>The change of what is on hand; none where it does not count.</summary>
    public Footage Change =>
        !Counts ? Footage.Zero
        : Entry is StockCame ? Film
        : Footage.Zero - Film;
}
