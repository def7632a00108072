namespace Spoolbook.Shoot.Records;

/// <summary>Stock that went through an X-ray machine, exposed or not.</summary>
public sealed record StockXRayed(Place Place) : StockEntry(Place)
{
    /// <summary>How many times; by default once.</summary>
    public Located<int>? Passes { get; init; }

    /// <inheritdoc/>
    public override string Word => "x-rayed";
}
