namespace Spoolbook.Shoot.Accounts;

/// <summary>What a line of the cost is for.</summary>
public enum CostKind
{
    /// <summary>Raw stock bought.</summary>
    Stock,

    /// <summary>Raw stock that came later; <see cref="CostLine.Name"/> says from where.</summary>
    Came,

    /// <summary>Raw stock sent away for a price, which is deducted.</summary>
    SentAway,

    /// <summary>Processing a roll, by the foot or the metre, with a minimum.</summary>
    Process,

    /// <summary>The surcharge for a roll pushed or pulled, by the stop.</summary>
    Push,

    /// <summary>Preparing a roll.</summary>
    Prep,

    /// <summary>Scanning a roll, by the foot, the metre or the hour.</summary>
    Scan,

    /// <summary>A workprint of a roll, by the foot or the metre.</summary>
    Workprint,

    /// <summary>A service without a kind of rate; <see cref="CostLine.Name"/> says which.</summary>
    Service,

    /// <summary>Sending the boxes of a consignment.</summary>
    Shipping,

    /// <summary>Tax on the lab's lines and on shipping, for each consignment, since each has a bill of its own.</summary>
    Tax,
}
