using System.Collections.Immutable;

namespace Spoolbook.Papers.Faults;

/// <summary>The names of printing's findings. Each has its page among the checks.</summary>
public static class PaperChecks
{
    public const string DoesNotFit = "paper/does-not-fit";
    public const string Language = "paper/language";
    public const string Logo = "paper/logo";
    public const string MissingGlyph = "paper/missing-glyph";
    public const string NoSuchLabel = "paper/no-such-label";
    public const string RightToLeft = "paper/right-to-left";
    public const string Template = "paper/template";
    public const string Words = "paper/words";

    /// <summary>All of them.</summary>
    public static ImmutableArray<string> All { get; } =
    [DoesNotFit, Language, Logo, MissingGlyph, NoSuchLabel, RightToLeft, Template, Words];
}
