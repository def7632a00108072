namespace Spoolbook.Shoot.Strips;

/// <summary>Why a frame is waste.</summary>
public enum WasteCause
{
    /// <summary>Exposed in loading.</summary>
    Head,

    /// <summary>Exposed in unloading.</summary>
    Tail,

    /// <summary>Went through the gate between takes with no entry for it, and never shot.</summary>
    Gap,

    /// <summary>First run with the lens capped, and never shot.</summary>
    RunOff,

    /// <summary>The door was opened.</summary>
    Fog,

    /// <summary>A take marked as a test.</summary>
    Test,

    /// <summary>Left over and thrown away.</summary>
    End,
}
