namespace Spoolbook.Film;

/// <summary>What is wrong with a written stop.</summary>
public enum StopFault
{
    /// <summary>Nothing is written.</summary>
    Empty,

    /// <summary>A stop of zero or less.</summary>
    NotAboveZero,

    /// <summary>A comma for the decimal point: <c>5,6</c>.</summary>
    DecimalComma,

    /// <summary>A split of two stops that are not neighbours: <c>4/8</c>.</summary>
    NotNeighbours,

    /// <summary>A part of a stop that is a stop or more: <c>5.6 4/3</c>.</summary>
    NotAPart,

    /// <summary>Beyond any lens: below 0.5 or above 256.</summary>
    BeyondAnyLens,

    /// <summary>Not written as a stop at all.</summary>
    NotAStop,
}
