namespace Spoolbook.Shoot.Shipments;

/// <summary>How a can came back.</summary>
public enum CanState
{
    /// <summary>Processed.</summary>
    Processed,

    /// <summary>As it went: the lab did not process it, so that it may go again.</summary>
    Unprocessed,

    /// <summary>Processed, and it goes to a lab again: for a scan, say.</summary>
    GoesOn,
}
