using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Strips;

/// <summary>
/// A place where the log and the film contradict each other. The strip keeps what fits on the roll, and this reports
/// what does not, so that nothing is trimmed silently.
/// </summary>
/// <param name="Kind">How they contradict each other.</param>
/// <param name="Entry">The entry of the log; null for the load or the unload.</param>
/// <param name="Place">Where the position was written.</param>
/// <param name="At">The position on the strip.</param>
/// <param name="Limit">The position that it passed: the roll's end, its head, the take's start or where the film was.</param>
public sealed record LogContradiction(ContradictionKind Kind, LogEntry? Entry, Place Place, Footage At, Footage Limit);
