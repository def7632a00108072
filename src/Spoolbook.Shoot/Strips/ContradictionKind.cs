namespace Spoolbook.Shoot.Strips;

/// <summary>How the log and the film contradict each other.</summary>
public enum ContradictionKind
{
    /// <summary>A position or a loss is beyond the end of the film loaded.</summary>
    BeyondEnd,

    /// <summary>A position is before the head of the roll.</summary>
    BeforeHead,

    /// <summary>A take ends before it starts.</summary>
    EndsBeforeStart,

    /// <summary>A take or a run-off is written behind where the film was, with no rewind.</summary>
    BehindStand,

    /// <summary>A rewind ends farther down the film than it starts.</summary>
    WoundForward,
}
