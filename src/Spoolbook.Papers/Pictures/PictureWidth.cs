namespace Spoolbook.Papers.Pictures;

/// <summary>How wide a picture is.</summary>
public enum PictureWidth
{
    /// <summary>For a printed page or a screen.</summary>
    Page,

    /// <summary>For a phone: the roll in several rows, at a readable size.</summary>
    Narrow,
}
