namespace Spoolbook.Shoot.Shipments;

/// <summary>Why exposed film does not go.</summary>
public enum LeftOutReason
{
    /// <summary>It is still in a camera.</summary>
    InCamera,

    /// <summary>The roll says <c>send: no</c>.</summary>
    HeldBack,

    /// <summary>The production names no lab.</summary>
    NoLab,

    /// <summary>Whoever ships leaves the production out.</summary>
    Without,
}
