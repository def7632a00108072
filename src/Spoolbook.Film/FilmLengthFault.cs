namespace Spoolbook.Film;

/// <summary>What is wrong with a written length.</summary>
public enum FilmLengthFault
{
    /// <summary>Nothing is written.</summary>
    Empty,

    /// <summary>A number alone, <c>31</c>: feet, frames, metres or seconds?</summary>
    NoUnit,

    /// <summary>A number with a unit that is not a length of film: <c>31in</c>.</summary>
    UnknownUnit,

    /// <summary>A length below zero: <c>-3ft</c>.</summary>
    Negative,

    /// <summary>A comma for the decimal point: <c>31,3ft</c>.</summary>
    DecimalComma,

    /// <summary>A colon, <c>1:30</c>: time is written in seconds.</summary>
    Clock,

    /// <summary>Minutes: <c>2min</c> or <c>2m30s</c>. Film is timed in seconds.</summary>
    Minutes,

    /// <summary>Feet without frames after the plus: <c>31+</c>.</summary>
    NoFrames,

    /// <summary>Frames without feet before the plus: <c>+12</c>.</summary>
    NoFeet,

    /// <summary>Part of a frame: <c>12.5fr</c> or <c>31+12.5</c>.</summary>
    PartOfAFrame,

    /// <summary>Part of a foot where frames follow: <c>31.5+12</c>.</summary>
    PartOfAFoot,

    /// <summary>Frames over whole feet that make a foot or more: <c>31+45</c> in 16 mm.</summary>
    FramesMakeAFoot,

    /// <summary>Longer than any film: a million feet and more.</summary>
    TooLong,

    /// <summary>Not written as a length at all.</summary>
    NotALength,
}
