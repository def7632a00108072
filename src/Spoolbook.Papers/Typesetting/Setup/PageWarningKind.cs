namespace Spoolbook.Papers.Typesetting.Setup;

public enum PageWarningKind
{
    /// <summary>The font lacks characters; a box is in place of each.</summary>
    MissingGlyph,

    /// <summary>Right-to-left text is drawn letter by letter from the left.</summary>
    RightToLeft,

    /// <summary>A label has no room for all of a text, even in small type; the text ends in an ellipsis.</summary>
    Shortened,

    /// <summary>A label has more on it than fits, even in small type; the rest is not drawn.</summary>
    Overflow,
}
