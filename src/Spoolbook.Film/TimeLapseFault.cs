namespace Spoolbook.Film;

/// <summary>Why a time-lapse cannot be worked out from what is known.</summary>
public enum TimeLapseFault
{
    /// <summary>Fewer than two independent figures: the frames and the screen time are one figure.</summary>
    TooLittleKnown,

    /// <summary>Figures that contradict one another.</summary>
    Contradiction,

    /// <summary>An interval, an event, frames or a screen time of nothing or less.</summary>
    NotAboveZero,
}
