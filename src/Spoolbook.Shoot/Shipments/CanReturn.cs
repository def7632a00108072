using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Shipments;

/// <summary>A can that came back.</summary>
/// <param name="Can">Its code.</param>
/// <param name="On">The day.</param>
public sealed record CanReturn(Place Place, string Can, DateOnly On)
{
    /// <summary>Who took it in; null where nobody wrote it.</summary>
    public string? By { get; init; }

    /// <summary>How it came back.</summary>
    public CanState State { get; init; }

    /// <summary>Printer lights, red, green and blue, by the slate of the take: <c>7B/1</c>, <c>27-31-25</c>.</summary>
    public ImmutableArray<(string Slate, string Lights)> Lights { get; init; } = [];

    /// <summary>What was found on the film.</summary>
    public ImmutableArray<FaultOnFilm> Faults { get; init; } = [];
}
