namespace Spoolbook.Entry;

/// <summary>A column of the Takes sheet, whatever its head in each language.</summary>
public enum TakeColumn
{
    Roll,
    Day,
    Scene,
    Shot,
    Take,
    Mark,
    Pass,

    /// <summary>In frames from the head of the roll, by the strip.</summary>
    FromFrame,

    /// <summary>In frames from the head of the roll, by the strip.</summary>
    ToFrame,

    /// <summary>From <see cref="FromFrame"/> to <see cref="ToFrame"/>.</summary>
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
    Focus,
    Filter,
    Body,
    Remarks,

    /// <summary>Scene and letter together, computed.</summary>
    SceneAndShot,

    /// <summary>1 in the first take of a shot, computed.</summary>
    NewShot,

    /// <summary>Frames of it that are good film, computed.</summary>
    GoodFrames,
}
