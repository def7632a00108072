using System.Text.RegularExpressions;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.Pages;

/// <summary>Finds what a user's style sheet must not have: it goes inside the page, which needs no other file.</summary>
static partial class StyleSheetCheck
{
    public static IEnumerable<TemplateFault> Faults(TemplateText sheet)
    {
        if (sheet.Refused is { } reason)
        {
            return [new TemplateFault(sheet.File, 1, 1, reason)];
        }

        var text = sheet.Text.ReplaceLineEndings("\n");
        var lines = new TextLines(text);
        return Forbidden()
            .Matches(text)
            .Select(match =>
            {
                var (line, column) = lines.Place(match.Index);
                return new TemplateFault(
                    sheet.File,
                    line,
                    column,
                    match.Value == "<"
                        ? Sentence.Of("paper/template.value.style-ends")
                        : Sentence.Of("paper/template.value.style-fetches", ("word", match.Value))
                );
            });
    }

    [GeneratedRegex(@"<|@import|(?:url|image-set|src)\(", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Forbidden();
}
