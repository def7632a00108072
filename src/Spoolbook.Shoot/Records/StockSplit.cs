using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>A short end that was cut into pieces, each in a can of its own.</summary>
public sealed record StockSplit(Place Place) : StockEntry(Place)
{
    /// <summary>Film in each piece.</summary>
    public required ImmutableArray<Located<Footage>> Into { get; init; }

    /// <inheritdoc/>
    public override string Word => "split";
}
