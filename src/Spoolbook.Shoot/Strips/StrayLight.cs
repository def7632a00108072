using System.Collections.Immutable;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Shoot.Strips;

/// <summary>Light that reached film outside any take.</summary>
/// <param name="Entry">The rewind or run-off.</param>
/// <param name="Span">The film that passed the open gate.</param>
/// <param name="Layers">Takes already on that film, in the order shot.</param>
public sealed record StrayLight(LogEntry Entry, Span Span, ImmutableArray<Layer> Layers);
