namespace Spoolbook.Film;

/// <summary>The ways in which a written amount of stops fails to be one.</summary>
public enum StopsFault
{
    /// <summary>Nothing is written.</summary>
    Empty,

    /// <summary>A comma for the decimal point: <c>0,5</c>.</summary>
    DecimalComma,

    /// <summary>A fraction over nothing: <c>1/0</c>.</summary>
    OverZero,

    /// <summary>More stops than film, shutter and filters together could take: beyond 30.</summary>
    TooMany,

    /// <summary>None of the forms that an amount has.</summary>
    NotAnAmount,
}
