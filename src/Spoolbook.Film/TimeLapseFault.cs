namespace Spoolbook.Film;

/// <summary>Why a time-lapse cannot be worked out.</summary>
public enum TimeLapseFault
{
    /// <summary>Fewer than two independent figures: the frames and the screen time are one figure.</summary>
    TooLittleKnown,

    /// <summary>Figures that contradict each other.</summary>
    Contradiction,

    /// <summary>An interval, event, frames or screen time of zero or less.</summary>
    NotAboveZero,
}
