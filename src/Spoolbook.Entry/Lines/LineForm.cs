namespace Spoolbook.Entry.Lines;

/// <summary>The look of a token that needs no name before it.</summary>
enum LineForm
{
    /// <summary>Where the film is: a number in the production's units, <c>70+12</c>, <c>1252fr</c>; <c>12s</c>, but for no take.</summary>
    Position,

    /// <summary>How long a take is, in seconds: <c>12s</c>.</summary>
    Duration,

    /// <summary>A distance with its unit, or infinity.</summary>
    Distance,

    /// <summary>A number with <c>fps</c> after it.</summary>
    Speed,

    /// <summary>A number with f or T before it.</summary>
    Stop,

    Clock,

    Date,

    /// <summary>A date and a time, or a time alone.</summary>
    Moment,

    /// <summary>A word from the key's list.</summary>
    Word,

    /// <summary>A mark, or its letter.</summary>
    Mark,

    /// <summary>Ones, twos or threes.</summary>
    Single,

    /// <summary>A name that the production knows for the key.</summary>
    Name,

    /// <summary>A mark on the shutter of the body in use, or the part that is open.</summary>
    Shutter,

    /// <summary>A lot and a unit.</summary>
    Unit,

    /// <summary>A length with <c>left</c> after it.</summary>
    Left,
}
