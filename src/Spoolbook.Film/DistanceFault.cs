namespace Spoolbook.Film;

/// <summary>What is wrong with a written distance.</summary>
public enum DistanceFault
{
    /// <summary>Nothing is written.</summary>
    Empty,

    /// <summary>A number alone, <c>6</c>: feet or metres?</summary>
    NoUnit,

    /// <summary>A distance below zero: <c>-3ft</c>.</summary>
    Negative,

    /// <summary>A comma for the decimal point: <c>1,8m</c>.</summary>
    DecimalComma,

    /// <summary>Twelve inches or more: <c>5ft 14in</c>.</summary>
    InchesMakeAFoot,

    /// <summary>From one distance to another, as of a pull: <c>6-9ft</c>, <c>6ft to 9ft</c>.</summary>
    TwoDistances,

    /// <summary>Not written as a distance at all.</summary>
    NotADistance,
}
