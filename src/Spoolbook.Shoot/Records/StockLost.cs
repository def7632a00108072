namespace Spoolbook.Shoot.Records;

/// <summary>Units or a short end that cannot be found.</summary>
public sealed record StockLost(Place Place) : StockEntry(Place)
{
    /// <inheritdoc/>
    public override string Word => "lost";
}
