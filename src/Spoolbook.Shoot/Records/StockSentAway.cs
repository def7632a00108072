namespace Spoolbook.Shoot.Records;

/// <summary>Units or a short end given to another production or back to a store.</summary>
public sealed record StockSentAway(Place Place) : StockEntry(Place)
{
    /// <summary>Who it went to.</summary>
    public Located<string>? To { get; init; }

    /// <summary>Price for each; null where none was agreed.</summary>
    public Located<decimal>? Price { get; init; }

    /// <inheritdoc/>
    public override string Word => "sent-away";
}
