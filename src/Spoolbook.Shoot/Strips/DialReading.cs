using Spoolbook.Film;

namespace Spoolbook.Shoot.Strips;

/// <summary>One reading of the footage dial against the strip.</summary>
/// <param name="Move">The entry that it was read at the end of.</param>
/// <param name="Strip">What an exact dial would read: where the film was, from the sheet's zero.</param>
/// <param name="Read">What it read.</param>
public sealed record DialReading(Move Move, Footage Strip, Footage Read)
{
    /// <summary>Film that the dial read too much; below zero, too little.</summary>
    public Footage Off => Read - Strip;
}
