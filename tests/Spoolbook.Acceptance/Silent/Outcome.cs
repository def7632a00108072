namespace Spoolbook.Acceptance.Silent;

/// <summary>Who noticed a changed value.</summary>
enum Outcome
{
    /// <summary>Nobody.</summary>
    Silent,

    /// <summary>A check could no longer judge something, and said so.</summary>
    Open,

    /// <summary>A finding.</summary>
    Finding,
}
