namespace Spoolbook.Film;

/// <summary>Why a time-lapse cannot be worked out.</summary>
public enum TimeLapseFault
{
    /// <summary>Fewer than two independent figures: the frames and the screen time are one figure.</summary>
    TooLittleKnown,

    /// <summary>Frames that do not last the screen time.</summary>
    FramesAgainstTime,

    /// <summary>Intervals, one for each frame, that do not add up to the event.</summary>
    IntervalsAgainstEvent,

    /// <summary>An event that is over before the first interval is.</summary>
    EventBeforeInterval,

    /// <summary>An interval, event, frames or screen time of zero or less.</summary>
    NotAboveZero,
}
