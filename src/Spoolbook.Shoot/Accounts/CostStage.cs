namespace Spoolbook.Shoot.Accounts;

/// <summary>How firm the cost of a line is.</summary>
public enum CostStage
{
    /// <summary>Spent before shooting: raw stock.</summary>
    Bought,

    /// <summary>On the lab order: rolls that are out of the camera and go to the lab.</summary>
    Ordered,

    /// <summary>Exposed and not yet on an order: rolls still in a camera.</summary>
    Committed,
}
