namespace Spoolbook.Shoot.Records;

/// <summary>A filter.</summary>
/// <param name="Stops">What it costs, in stops.</param>
/// <param name="Mireds">What it adds to the mireds of the light; null where its name tells.</param>
public sealed record Filter(
    Place Place,
    Located<string> Name,
    Located<string>? What,
    Located<double>? Stops,
    Located<int>? Mireds,
    Returned Returned
)
{
    /// <summary>Its number, or a mark to know it by.</summary>
    public Located<string>? Serial { get; init; }
}
