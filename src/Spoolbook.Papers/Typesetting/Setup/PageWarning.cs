using System.Collections.Immutable;
using Spoolbook.Papers.Pages;

namespace Spoolbook.Papers.Typesetting.Setup;

/// <summary>Something on a page that its reader should know: what it is, the whole text around it, and the template's place.</summary>
public sealed record PageWarning(PageWarningKind Kind, string Text, TemplatePlace Place)
{
    /// <summary>The letters and signs that the font lacks, each once.</summary>
    public ImmutableArray<string> Missing { get; init; } = [];

    /// <summary>How many letters of a shortened text are printed.</summary>
    public int Letters { get; init; }

    /// <summary>The words before a shortened text, which say what it is.</summary>
    public string Before { get; init; } = "";

    /// <summary>The beginning of the text.</summary>
    public string Near => Text.Length <= Enough ? Text : Text[..(char.IsHighSurrogate(Text[Enough - 1]) ? Enough - 1 : Enough)] + "…";

    const int Enough = 60;
}
