namespace Spoolbook.Papers.Typesetting.Setting;

enum Decoration
{
    None,

    /// <summary>A hairline box round the words.</summary>
    Boxed,

    /// <summary>White on black.</summary>
    Inverse,
}
