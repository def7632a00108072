using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Strips;

/// <summary>Film to which something happened beside a take.</summary>
/// <param name="Custody">Whose it was.</param>
readonly record struct Stretch(Span Span, FrameCause Kind, Custody Custody);
