namespace Spoolbook.Film;

/// <summary>What is wrong with a written figure.</summary>
public enum MeasureFault
{
    /// <summary>Nothing is written.</summary>
    Empty,

    /// <summary>A number alone, where a unit is needed: <c>80</c>.</summary>
    NoUnit,

    /// <summary>The unit of something else: <c>80kg</c>.</summary>
    UnknownUnit,

    /// <summary>A comma for the decimal point: <c>1,5h</c>.</summary>
    DecimalComma,

    /// <summary>Below zero.</summary>
    Negative,

    /// <summary>Zero, where it must be more: <c>0mm</c>.</summary>
    NotAboveZero,

    /// <summary>A fraction over zero: <c>1/0</c>.</summary>
    OverZero,

    /// <summary>Too much: a part above the whole, or more than fifteen digits.</summary>
    TooMuch,

    /// <summary>Not a number.</summary>
    NotANumber,
}
