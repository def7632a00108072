using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Walks;

/// <summary>One thing that happened to a roll, with the roll before and after.</summary>
/// <param name="Entry">The entry of the log; null for loading and unloading.</param>
/// <param name="Before">Where the roll was before it.</param>
/// <param name="After">Where the roll was after it.</param>
public sealed record Moment(LogEntry? Entry, RollStand Before, RollStand After)
{
    /// <summary>Its shooting day, which all film that it ran or lost is booked on.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>When it happened on the calendar, where an hour was written; at night, the day after its shooting day.</summary>
    public required DateTime? When { get; init; }

    /// <summary>Where its film starts on the strip: for a take as written, for anything else where the film was.</summary>
    public required Footage? Starts { get; init; }

    /// <summary>Where the film was before it, on the strip.</summary>
    public Footage From => Before.Position ?? Footage.Zero;

    /// <summary>Where the film was after it, on the strip.</summary>
    public Footage To => After.Position ?? Footage.Zero;

    /// <summary>Who kept the camera, by id; null where the sheet names nobody.</summary>
    public string? By => (Entry as Take)?.By?.Value ?? After.By;
}
