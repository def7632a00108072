using Spoolbook.Film;

namespace Spoolbook.Shoot.Strips;

/// <summary>One reading of the footage dial against the strip.</summary>
/// <param name="Move">The entry at whose end it was read.</param>
/// <param name="Strip">What the dial would tell if it were exact: where the film stood, in the sheet's counting.</param>
/// <param name="Read">What it told.</param>
public sealed record DialReading(Move Move, Footage Strip, Footage Read)
{
    /// <summary>Film that the dial told too much; below zero if too little.</summary>
    public Footage Off => Read - Strip;
}
