namespace Spoolbook.Shoot.Accounts;

/// <summary>Where a can of raw stock is.</summary>
public enum StockPlace
{
    /// <summary>It has not come yet, or the roll that it will be cut from is still in the camera.</summary>
    NotYet,

    /// <summary>On hand, to load.</summary>
    Store,

    /// <summary>In a camera.</summary>
    Camera,

    /// <summary>Out of the camera, exposed. The rest is a short end with a can of its own.</summary>
    Shot,

    /// <summary>Opened for practice.</summary>
    Practised,

    /// <summary>Given to somebody outside.</summary>
    SentAway,

    /// <summary>Lost, or damaged beyond use.</summary>
    Lost,
}
