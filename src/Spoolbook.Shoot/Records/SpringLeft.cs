namespace Spoolbook.Shoot.Records;

/// <summary>How the spring of a body was left: <c>run-down</c> or <c>wound</c>.</summary>
public enum SpringLeft
{
    /// <summary>Without tension, as it should be.</summary>
    RunDown,

    /// <summary>With some of its wind left.</summary>
    Wound,
}
