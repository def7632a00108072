namespace Spoolbook.Film;

/// <summary>The ways in which a written distance fails to be one.</summary>
public enum DistanceFault
{
    /// <summary>Nothing is written.</summary>
    Empty,

    /// <summary>A number alone, <c>6</c>: feet or metres?</summary>
    NoUnit,

    /// <summary>A distance below nothing: <c>-3ft</c>.</summary>
    Negative,

    /// <summary>A comma for the decimal point: <c>1,8m</c>.</summary>
    DecimalComma,

    /// <summary>A foot or more in the inches: <c>5ft 14in</c>.</summary>
    InchesMakeAFoot,

    /// <summary>None of the forms that a distance has.</summary>
    NotADistance,
}
