using System.Collections.Immutable;

namespace Spoolbook.Entry;

/// <summary>What came of reading a shot list.</summary>
/// <param name="Refused">Why it is not taken in; empty where it is.</param>
/// <param name="Notes">What is worth knowing of how it was read.</param>
public sealed record ShotList(ImmutableArray<ListedShot> Shots, ImmutableArray<Objection> Refused, ImmutableArray<Objection> Notes);
