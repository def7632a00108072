using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Walks;

/// <summary>A roll in a body, from when it was loaded or threaded again to when it was taken out.</summary>
/// <param name="Roll">The roll.</param>
/// <param name="Body">The body, by name.</param>
/// <param name="From">When it went in.</param>
/// <param name="In">Where that is written.</param>
/// <param name="To">
/// When it came out; null where it is still in. Before a reload nobody writes when the roll was taken out: the last known
/// hour in the body.
/// </param>
/// <param name="Out">Where that is written; null where it is still in, and before a reload.</param>
public sealed record BodyStay(Roll Roll, string Body, DateTime From, Place In, DateTime? To, Place? Out);
