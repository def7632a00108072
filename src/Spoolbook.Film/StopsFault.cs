namespace Spoolbook.Film;

/// <summary>What is wrong with a written number of stops.</summary>
public enum StopsFault
{
    /// <summary>Nothing is written.</summary>
    Empty,

    /// <summary>A comma for the decimal point: <c>0,5</c>.</summary>
    DecimalComma,

    /// <summary>A fraction over zero: <c>1/0</c>.</summary>
    OverZero,

    /// <summary>More stops than film, shutter and filters together could take: beyond 30.</summary>
    TooMany,

    /// <summary>Not written as a number of stops at all.</summary>
    NotAnAmount,
}
