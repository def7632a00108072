namespace Spoolbook.Entry;

/// <summary>A column of the Takes sheet, whatever its head is called in a language.</summary>
public enum TakeColumn
{
    Roll,
    Day,
    Scene,
    Shot,
    Take,
    Mark,
    Pass,

    /// <summary>In frames from the head of the roll, as the strip counts.</summary>
    FromFrame,

    /// <summary>In frames from the head of the roll, as the strip counts.</summary>
    ToFrame,

    /// <summary>From the one to the other, in frames.</summary>
    Frames,

    /// <summary>As <see cref="FromFrame"/>, in feet or metres.</summary>
    From,

    /// <summary>As <see cref="ToFrame"/>, in feet or metres.</summary>
    To,

    /// <summary>As <see cref="Frames"/>, in feet or metres.</summary>
    Length,

    ScreenTime,
    Speed,
    Lens,
    Stop,
    Filter,
    Body,
    Remarks,

    /// <summary>Scene and letter together, reckoned.</summary>
    SceneAndShot,

    /// <summary>1 in the first take of a shot, reckoned.</summary>
    NewShot,
}
