namespace Spoolbook.Shoot.Records;

/// <summary>
/// The exposure time that the production sets its meters to: <c>adapted</c> for the light that the finder takes, or the
/// time <c>marked</c> on the camera (common practice: choose one and keep to it).
/// </summary>
public enum FinderPractice
{
    /// <summary>The marked time less the finder's part.</summary>
    Adapted,

    /// <summary>The time from shutter angle and speed alone.</summary>
    Marked,
}
