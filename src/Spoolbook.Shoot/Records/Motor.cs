using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>A motor.</summary>
/// <param name="Sync">Whether it holds speed well enough for sound.</param>
public sealed record Motor(
    Place Place,
    Located<string> Name,
    Located<string>? What,
    ImmutableArray<Located<Speed>> Speeds,
    Located<bool>? Sync,
    Returned Returned
)
{
    /// <summary>Its number, or a mark to know it by.</summary>
    public Located<string>? Serial { get; init; }
}
