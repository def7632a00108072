namespace Spoolbook.Shoot.Accounts;

/// <summary>Where a can of raw stock is.</summary>
public enum StockPlace
{
    /// <summary>It has not come yet, or the roll that it is cut from is still in the camera.</summary>
    NotYet,

    /// <summary>On hand: it can be loaded.</summary>
    Store,

    /// <summary>In a camera.</summary>
    Camera,

    /// <summary>Out of the camera: exposed; what was left over is a short end with a can of its own.</summary>
    Shot,

    /// <summary>Opened to practise with.</summary>
    Practised,

    /// <summary>Given to somebody else.</summary>
    SentAway,

    /// <summary>Lost, or damaged beyond use.</summary>
    Lost,
}
