namespace Spoolbook.Shoot.Records;

/// <summary>Units that came after the first delivery, or came back.</summary>
public sealed record StockCame(Place Place) : StockEntry(Place)
{
    /// <summary>Who gave it: another production, a store.</summary>
    public Located<string>? From { get; init; }

    /// <summary>Price paid for each; the lot's unless written, and nothing for what was sent away from here and comes back.</summary>
    public Located<decimal>? Price { get; init; }

    /// <inheritdoc/>
    public override string Word => "came";

    /// <inheritdoc/>
    public override DateTime At => On.Value.Earliest;
}
