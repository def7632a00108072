namespace Spoolbook.Shoot.Records;

/// <summary>Stock taken out of the cold to warm up before it is opened.</summary>
public sealed record StockOutOfCold(Place Place) : StockEntry(Place)
{
    /// <summary>The cold store that it came out of; by default a fridge.</summary>
    public Located<ColdStore>? From { get; init; }

    /// <inheritdoc/>
    public override string Word => "out-of-cold";

    /// <inheritdoc/>
    public override DateTime At => On.Value.Earliest;
}
