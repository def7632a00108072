using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Strips;

/// <summary>
/// A place where the log and the film cannot both be right. The strip then holds what fits on the roll; what
/// does not fit is told here, so that nothing is trimmed in silence.
/// </summary>
/// <param name="Kind">In what way.</param>
/// <param name="Entry">The entry of the log; null for the load or the unload.</param>
/// <param name="Place">Where the position was written.</param>
/// <param name="At">The position, in the strip's counting.</param>
/// <param name="Limit">The position that it passed: the roll's end, its head, the take's start or where the film stood.</param>
public sealed record LogContradiction(ContradictionKind Kind, LogEntry? Entry, Place Place, Footage At, Footage Limit);
