using Spoolbook.Film;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Strips;

/// <summary>
/// How the film moved in one entry of the log. Positions are as logged, converted to the strip's and not trimmed to the
/// roll: a move may end before the head or beyond the end.
/// </summary>
/// <param name="Entry">The entry.</param>
/// <param name="From">Where the film was before it.</param>
/// <param name="To">Where the film was after it; before <paramref name="From"/> in a rewind.</param>
/// <param name="Pass">Its pass; a rewind belongs to the pass that it ends.</param>
public sealed record Move(LogEntry Entry, Footage From, Footage To, int Pass)
{
    /// <summary>
    /// How far down the film the sheet's zero is at the end of the entry: a position on the strip less this is the
    /// position on the sheet and the dial. Zero until the first reload.
    /// </summary>
    public Footage ZeroMoved { get; init; }

    /// <summary>The body with the film at the end of the entry, by name; null where the sheet names none.</summary>
    public string? Body { get; init; }

    /// <summary>The move of a moment in the roll's walk.</summary>
    internal static Move Of(Moment moment) =>
        new(moment.Entry!, moment.From, moment.To, moment.Before.Pass) { ZeroMoved = moment.After.Zero, Body = moment.After.Body };
}
