namespace Spoolbook.Papers.Typesetting.Fonts;

/// <summary>The weights of Inter that the papers use. It has no italic.</summary>
enum Face
{
    Regular,
    Medium,
    SemiBold,
    Bold,
}
