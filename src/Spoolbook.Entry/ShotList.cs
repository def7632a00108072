using System.Collections.Immutable;

namespace Spoolbook.Entry;

/// <summary>A shot list that was read.</summary>
/// <param name="Refused">Why it is refused; empty where it is not.</param>
/// <param name="Notes">What the user should know about how it was read.</param>
public sealed record ShotList(ImmutableArray<ListedShot> Shots, ImmutableArray<Objection> Refused, ImmutableArray<Objection> Notes);
