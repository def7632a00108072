namespace Spoolbook.Shoot.Accounts;

/// <summary>What is wrong with an entry of the stock log.</summary>
public enum StockFault
{
    /// <summary>No unit of that number ever came, or that roll left no short end by then.</summary>
    NeverHere,

    /// <summary>It came, but was here already.</summary>
    HereAlready,

    /// <summary>It had been loaded by then.</summary>
    Loaded,

    /// <summary>It had been sent away.</summary>
    SentAway,

    /// <summary>It had been lost.</summary>
    Lost,

    /// <summary>It had been damaged beyond use.</summary>
    Damaged,

    /// <summary>More was thrown away than was in the can.</summary>
    MoreThanInIt,

    /// <summary>It had been split by then.</summary>
    SplitAlready,

    /// <summary>It went away, and was loaded afterwards without coming back.</summary>
    LoadedAfterwards,

    /// <summary>It was loaded before it came. The entry still counts.</summary>
    LoadedBefore,
}
