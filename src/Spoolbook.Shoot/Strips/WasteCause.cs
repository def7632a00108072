namespace Spoolbook.Shoot.Strips;

/// <summary>Why a frame is waste.</summary>
public enum WasteCause
{
    /// <summary>Exposed in loading.</summary>
    Head,

    /// <summary>Exposed in unloading.</summary>
    Tail,

    /// <summary>Went through the gate between takes with nothing said of it, and never shot.</summary>
    Gap,

    /// <summary>Run with the lens capped the first time it went through, and never shot.</summary>
    RunOff,

    /// <summary>The door was opened.</summary>
    Fog,

    /// <summary>A take marked as a test.</summary>
    Test,

    /// <summary>Left over and thrown away.</summary>
    End,
}
