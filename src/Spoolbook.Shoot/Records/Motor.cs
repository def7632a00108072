using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>A motor.</summary>
/// <param name="Sync">Whether it holds its speed well enough for sync sound.</param>
public sealed record Motor(
    Place Place,
    Located<string> Name,
    Located<string>? What,
    ImmutableArray<Located<Speed>> Speeds,
    Located<bool>? Sync,
    Returned Returned
)
{
    /// <summary>Its serial number, or a mark on it.</summary>
    public Located<string>? Serial { get; init; }
}
