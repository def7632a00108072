namespace Spoolbook.Shoot.Records;

/// <summary>Stock put back in the cold.</summary>
public sealed record StockIntoCold(Place Place) : StockEntry(Place)
{
    /// <inheritdoc/>
    public override string Word => "into-cold";
}
