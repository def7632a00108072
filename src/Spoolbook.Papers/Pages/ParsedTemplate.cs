using Scriban;

namespace Spoolbook.Papers.Pages;

/// <summary>A parsed template without anything that the sandbox forbids.</summary>
sealed class ParsedTemplate(string file, string text, Template template)
{
    readonly TextLines _lines = new(text);

    public string Text { get; } = text;

    public Template Template { get; } = template;

    public TemplatePlace Place(int offset)
    {
        var (line, column) = _lines.Place(Math.Clamp(offset, 0, Text.Length));
        return new TemplatePlace(file, line, column);
    }
}
