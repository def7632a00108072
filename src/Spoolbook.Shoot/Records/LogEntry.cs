using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>One thing that happened to a roll, in the order of the log.</summary>
/// <param name="Place">The whole entry's first line.</param>
public abstract record LogEntry(Place Place)
{
    /// <summary>The time of day, if written.</summary>
    public Located<TimeOnly>? At { get; init; }

    /// <summary>Its shooting day, where that does not follow from its date or from the entry before.</summary>
    public Located<DateOnly>? Day { get; init; }

    /// <summary>The frame counter's reading at the end of the entry, if written.</summary>
    public Located<long>? Counter { get; init; }

    /// <summary>The footage dial's reading at the end of the entry, if written.</summary>
    public Located<Footage>? Dial { get; init; }

    /// <summary>Remarks.</summary>
    public Located<string>? Note { get; init; }

    /// <summary>The number of the line of the short form that said it, with four digits of that line; null for none.</summary>
    public Located<string>? Line { get; init; }

    /// <summary>The entry's key in the log: <c>take</c>, <c>rewind</c>, …</summary>
    public abstract string Word { get; }
}
