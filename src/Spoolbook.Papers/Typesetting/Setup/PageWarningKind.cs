namespace Spoolbook.Papers.Typesetting.Setup;

public enum PageWarningKind
{
    /// <summary>The font lacks characters; a box stands in the place of each.</summary>
    MissingGlyph,

    /// <summary>Text that runs from right to left is drawn letter by letter from the left.</summary>
    RightToLeft,

    /// <summary>A label has no room for all of a text, even in small letters; it ends in three points.</summary>
    Shortened,

    /// <summary>A label holds more than its space, even in small letters; the rest is not drawn.</summary>
    Overflow,
}
