using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Walks;

/// <summary>One thing that happened to a roll: what it found, and what it left.</summary>
/// <param name="Entry">The entry of the log; null for loading and taking out.</param>
/// <param name="Before">Where the roll was before it.</param>
/// <param name="After">Where the roll was after it.</param>
public sealed record Moment(LogEntry? Entry, RollStand Before, RollStand After)
{
    /// <summary>The shooting day that it is booked on, and all the film with it that it ran or lost.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>When it happened on the calendar, where an hour was written: in the night the day after its shooting day.</summary>
    public required DateTime? When { get; init; }

    /// <summary>
    /// Where its film starts, in the strip's counting: of a take where it is written to start, of anything else where the film stood.
    /// </summary>
    public required Footage? Starts { get; init; }

    /// <summary>Where the film stood before it, in the strip's counting.</summary>
    public Footage From => Before.Position ?? Footage.Zero;

    /// <summary>Where the film stood after it, in the strip's counting.</summary>
    public Footage To => After.Position ?? Footage.Zero;

    /// <summary>Who kept the camera, by id; null where the sheet names nobody.</summary>
    public string? By => (Entry as Take)?.By?.Value ?? After.By;
}
