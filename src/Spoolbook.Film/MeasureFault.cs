namespace Spoolbook.Film;

/// <summary>The ways in which a written figure fails to be one.</summary>
public enum MeasureFault
{
    /// <summary>Nothing is written.</summary>
    Empty,

    /// <summary>A number alone, where a unit is needed: <c>80</c>.</summary>
    NoUnit,

    /// <summary>A unit that does not measure this: <c>80kg</c>.</summary>
    UnknownUnit,

    /// <summary>A comma for the decimal point: <c>1,5h</c>.</summary>
    DecimalComma,

    /// <summary>Below nothing.</summary>
    Negative,

    /// <summary>Nothing, where there must be something: <c>0mm</c>.</summary>
    NotAboveZero,

    /// <summary>A fraction over nothing: <c>1/0</c>.</summary>
    OverZero,

    /// <summary>More than there can be: a part above the whole, or more than fifteen digits.</summary>
    TooMuch,

    /// <summary>No number at all.</summary>
    NotANumber,
}
