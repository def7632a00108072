namespace Spoolbook.Film;

/// <summary>The ways in which a written stop fails to be one.</summary>
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

    /// <summary>Beyond any lens: smaller than 0.5 or larger than 256.</summary>
    BeyondAnyLens,

    /// <summary>None of the forms that a stop has.</summary>
    NotAStop,
}
