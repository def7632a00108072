using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>One entry of the stock log as far as it tells about one can.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Lot">The lot of the film.</param>
/// <param name="Unit">The unit; null for a short end.</param>
/// <param name="ShortEndOf">The roll whose short end it is; null for a unit.</param>
/// <param name="At">When it is counted.</param>
/// <param name="Film">Film that came, went, or was thrown away.</param>
/// <param name="Fault">What cannot be right about it; null where nothing is wrong.</param>
public sealed record StockMove(StockEntry Entry, StockLot Lot, int? Unit, Roll? ShortEndOf, DateTime At, Footage Film, StockFault? Fault)
{
    /// <summary>Whether the books go by it.</summary>
    public bool Counts => Fault is null or StockFault.LoadedBefore;

    /// <summary>Who gave or got it; null where nobody is named.</summary>
    public string? With =>
        Entry switch
        {
            StockCame came => came.From?.Value,
            StockSentAway sent => sent.To?.Value,
            _ => null,
        };

    /// <summary>The day on which it is counted.</summary>
    public DateOnly On => DateOnly.FromDateTime(At);

    /// <summary>By how much it changes what is on hand; nothing where it does not count.</summary>
    public Footage Change =>
        !Counts ? Footage.Zero
        : Entry is StockCame ? Film
        : Footage.Zero - Film;
}
