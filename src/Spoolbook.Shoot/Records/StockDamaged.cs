namespace Spoolbook.Shoot.Records;

/// <summary>Units or a short end that cannot be used any more: opened in the light, wet, left in the sun.</summary>
public sealed record StockDamaged(Place Place) : StockEntry(Place)
{
    /// <inheritdoc/>
    public override string Word => "damaged";
}
