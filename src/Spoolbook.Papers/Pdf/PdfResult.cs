using System.Collections.Immutable;
using Spoolbook.Papers.Pages;

namespace Spoolbook.Papers.Pdf;

/// <summary>What the file says of itself. The moment of making is the caller's, never the clock's.</summary>
public sealed record PdfMeta(string Title, string Author, string Language, DateTimeOffset Made);

/// <summary>The finished file, and what could not be drawn as it was written.</summary>
public sealed record PdfResult(byte[] Bytes, int Pages, ImmutableArray<PageWarning> Warnings);

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

/// <summary>Something on a page that its reader should know of: what it is, the whole text that it is in, and the template's place.</summary>
public sealed record PageWarning(PageWarningKind Kind, string Text, TemplatePlace Place)
{
    /// <summary>The letters and signs that the font lacks, each once.</summary>
    public ImmutableArray<string> Missing { get; init; } = [];

    /// <summary>How many letters of a shortened text stand there.</summary>
    public int Letters { get; init; }

    /// <summary>The words before a shortened text, which say what it is.</summary>
    public string Before { get; init; } = "";

    /// <summary>The beginning of the text.</summary>
    public string Near => Text.Length <= Enough ? Text : Text[..(char.IsHighSurrogate(Text[Enough - 1]) ? Enough - 1 : Enough)] + "…";

    const int Enough = 60;
}
