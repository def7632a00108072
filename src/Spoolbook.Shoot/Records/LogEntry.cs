using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>One thing that happened to a roll, in the order of the log.</summary>
/// <param name="Place">The whole entry's first line.</param>
public abstract record LogEntry(Place Place)
{
    /// <summary>The time of day, if it was written down.</summary>
    public Located<TimeOnly>? At { get; init; }

    /// <summary>
    /// The shooting day that it is booked on, where that is not the day that follows from its date or from the entry before it.
    /// </summary>
    public Located<DateOnly>? Day { get; init; }

    /// <summary>The frame counter's reading at the end of the entry, if it was written down.</summary>
    public Located<long>? Counter { get; init; }

    /// <summary>The footage dial's reading at the end of the entry, if it was written down.</summary>
    public Located<Footage>? Dial { get; init; }

    /// <summary>Remarks.</summary>
    public Located<string>? Note { get; init; }

    /// <summary>The key that the entry is written under: <c>take</c>, <c>rewind</c>, …</summary>
    public abstract string Word { get; }
}
