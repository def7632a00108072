namespace Spoolbook.Papers.Pictures;

/// <summary>How wide a picture is made.</summary>
public enum PictureWidth
{
    /// <summary>For a printed page or a screen.</summary>
    Page,

    /// <summary>For a telephone: the roll in rows under one another, at a size that can be read.</summary>
    Narrow,
}
