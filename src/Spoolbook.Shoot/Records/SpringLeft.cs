namespace Spoolbook.Shoot.Records;

/// <summary>How the spring of a body that was put away stands: <c>run-down</c> or <c>wound</c>.</summary>
public enum SpringLeft
{
    /// <summary>Without tension, as it should.</summary>
    RunDown,

    /// <summary>With some of its wind left.</summary>
    Wound,
}
