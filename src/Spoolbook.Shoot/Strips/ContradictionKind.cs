namespace Spoolbook.Shoot.Strips;

/// <summary>In what way the log and the film cannot both be right.</summary>
public enum ContradictionKind
{
    /// <summary>A position or a loss lies beyond the end of the film loaded.</summary>
    BeyondEnd,

    /// <summary>A position lies before the head of the roll.</summary>
    BeforeHead,

    /// <summary>A take ends before it starts.</summary>
    EndsBeforeStart,

    /// <summary>A take or a run-off is written behind where the film stood, and nothing says that it was wound back.</summary>
    BehindStand,

    /// <summary>A rewind ends farther down the film than it started.</summary>
    WoundForward,
}
