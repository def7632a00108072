using Spoolbook.Film;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Strips;

/// <summary>
/// How the film moved in one entry of the log. Positions are the log's own words, put into the strip's
/// counting and not trimmed to the roll: a move may end before the head or beyond the end.
/// </summary>
/// <param name="Entry">The entry.</param>
/// <param name="From">Where the film stood before it.</param>
/// <param name="To">Where it stood after it; before <paramref name="From"/> in a rewind.</param>
/// <param name="Pass">The pass during it; a rewind belongs to the pass that it ends.</param>
public sealed record Move(LogEntry Entry, Footage From, Footage To, int Pass)
{
    /// <summary>
    /// How far the zero of the log's counting lies down the film at the end of the entry: a position of the
    /// strip less this is the position that the sheet and the dial tell. Zero until the film is threaded again.
    /// </summary>
    public Footage ZeroMoved { get; init; }

    /// <summary>The body that held the film at the end of the entry, by name; null where the sheet names none.</summary>
    public string? Body { get; init; }

    /// <summary>The move in a moment of the roll's walk.</summary>
    internal static Move Of(Moment moment) =>
        new(moment.Entry!, moment.From, moment.To, moment.Before.Pass) { ZeroMoved = moment.After.Zero, Body = moment.After.Body };
}
