namespace Spoolbook.Shoot.Records;

/// <summary>What the lab charges its minimum for: the lab says which.</summary>
public enum MinimumPer
{
    /// <summary>Each roll costs at least the minimum.</summary>
    Roll,

    /// <summary>All rolls of a production with one process, in one consignment, cost at least the minimum together.</summary>
    Production,

    /// <summary>All rolls of an order with one process cost at least the minimum together, whoever's they are.</summary>
    Order,
}
