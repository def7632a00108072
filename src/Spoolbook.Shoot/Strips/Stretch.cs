using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Strips;

/// <summary>Film that something happened to outside a take.</summary>
/// <param name="Custody">Who had it.</param>
readonly record struct Stretch(Span Span, FrameCause Kind, Custody Custody);
