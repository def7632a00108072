namespace Spoolbook.Shoot.Records;

/// <summary>A filter.</summary>
/// <param name="Stops">The light that it takes, in stops.</param>
/// <param name="Mireds">Its shift in mireds; null where its name gives it.</param>
public sealed record Filter(
    Place Place,
    Located<string> Name,
    Located<string>? What,
    Located<double>? Stops,
    Located<int>? Mireds,
    Returned Returned
)
{
    /// <summary>Its serial number, or a mark on it.</summary>
    public Located<string>? Serial { get; init; }
}
