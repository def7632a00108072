namespace Spoolbook.Papers.Pages;

/// <summary>Where templates come from. The engine asks for plain file names only; what lies behind a name is the caller's.</summary>
public interface ITemplateSource
{
    /// <summary>The template of this name, or null where there is none.</summary>
    TemplateText? Find(string name);
}

/// <summary>A template's text, and the file that a message about it should name.</summary>
public sealed record TemplateText(string File, string Text)
{
    /// <summary>Why the file is not to be used though it is there: it lies elsewhere, it is too long. Null for one that may be read.</summary>
    public string? Refused { get; init; }
}

/// <summary>A place in a template; line and column count from one.</summary>
public readonly record struct TemplatePlace(string File, int Line, int Column)
{
    public override string ToString() => FormattableString.Invariant($"{File}({Line},{Column})");
}

/// <summary>What is wrong with a template, and where.</summary>
public sealed record TemplateFault(string File, int Line, int Column, string Reason)
{
    public TemplateFault(TemplatePlace place, string reason)
        : this(place.File, place.Line, place.Column, reason)
    {
    }

    public override string ToString() => FormattableString.Invariant($"{File}({Line},{Column}): {Reason}");
}

/// <summary>
/// XHTML or SVG made by our own code, printed by a template as it stands. Everything else that a template prints is escaped.
/// </summary>
public sealed record Markup(string Xml);
