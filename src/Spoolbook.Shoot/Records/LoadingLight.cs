namespace Spoolbook.Shoot.Records;

/// <summary>The light in which film was loaded or unloaded: <c>dark</c>, <c>subdued</c> or <c>bright</c>.</summary>
public enum LoadingLight
{
    /// <summary>A darkroom or changing bag.</summary>
    Dark,

    /// <summary>Shade, as for a daylight spool.</summary>
    Subdued,

    /// <summary>Sun or lamps on the spool.</summary>
    Bright,
}
