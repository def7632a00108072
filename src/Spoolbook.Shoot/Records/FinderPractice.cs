namespace Spoolbook.Shoot.Records;

/// <summary>
/// Which exposure time the production sets its meters for, once for all: <c>adapted</c> for the light that
/// the finder takes, or the time <c>marked</c> on the camera (common practice: whichever, keep to one).
/// </summary>
public enum FinderPractice
{
    /// <summary>The marked time less what the finder takes.</summary>
    Adapted,

    /// <summary>The time from shutter angle and speed alone.</summary>
    Marked,
}
