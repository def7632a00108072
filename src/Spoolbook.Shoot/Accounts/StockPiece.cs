using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>A piece of a short end: what one roll was cut from it, or what is still in a can.</summary>
/// <param name="Number">Its number among the pieces; from 1.</param>
/// <param name="Film">Film in it at first.</param>
/// <param name="Said">Film in it when it was loaded, or now: less ends thrown away.</param>
/// <param name="Roll">The roll that it was loaded as; null where it was not.</param>
/// <param name="Moves">Its entries in the stock log, in order of time, impossible ones included.</param>
sealed record StockPiece(int Number, Footage Film, Footage Said, Roll? Roll, ImmutableArray<StockMove> Moves);
