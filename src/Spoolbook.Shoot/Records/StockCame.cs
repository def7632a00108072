namespace Spoolbook.Shoot.Records;

/// <summary>Units that came after the first delivery, or came back.</summary>
public sealed record StockCame(Place Place) : StockEntry(Place)
{
    /// <summary>Where it came from: another production, a store.</summary>
    public Located<string>? From { get; init; }

    /// <summary>Price paid for each; by default the lot's, and nothing for stock that was sent away from here and comes back.</summary>
    public Located<decimal>? Price { get; init; }

    /// <inheritdoc/>
    public override string Word => "came";

    /// <inheritdoc/>
    public override DateTime At => On.Value.Earliest;
}
