namespace Spoolbook.Shoot.Strips;

/// <summary>
/// What can happen to film outside a take, in order of precedence. What ruined a frame beats any take on it; how an
/// unshot frame went by counts only where there is no take.
/// </summary>
enum FrameCause
{
    /// <summary>The door was opened.</summary>
    Fog,

    /// <summary>Exposed in unloading.</summary>
    Tail,

    /// <summary>Exposed in loading, at the head or where the roll was threaded again.</summary>
    Head,

    /// <summary>Run without a picture.</summary>
    RunOff,

    /// <summary>Went through the gate.</summary>
    Passed,

    /// <summary>Beyond the farthest run: never went through the gate.</summary>
    Left,
}
