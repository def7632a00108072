namespace Spoolbook.Shoot.Records;

/// <summary>What a stop of push costs: an amount, or a part of what the roll's process costs. Exactly one is there.</summary>
/// <param name="Amount">The amount a roll and stop.</param>
/// <param name="Part">The part of the price of processing: 0.25 for 25 %.</param>
public sealed record PushRate(decimal? Amount, decimal? Part)
{
    /// <summary>The price of a stop; null where it follows from a process that has no price.</summary>
    /// <param name="process">What processing the roll costs; null where it is open.</param>
    public decimal? For(decimal? process) => Amount ?? (process * Part);
}
